import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { type Browser, chromium } from "playwright-core";

/** The Chromium of this machine: $CHROMIUM, /usr/bin/chromium, or chromium on the PATH. */
export function chromiumPath(): string {
	const onPath = (process.env.PATH ?? "")
		.split(delimiter)
		.map((folder) => join(folder, "chromium"));
	const found = [process.env.CHROMIUM, "/usr/bin/chromium", ...onPath].find(
		(path) => path !== undefined && path !== "" && existsSync(path),
	);
	if (found) return found;
	throw new Error(
		"No Chromium was found. Install it (Debian: apt-get install chromium) or set CHROMIUM to its path.",
	);
}

/** Starts a browser that talks to nobody on its own. */
export function startBrowser(): Promise<Browser> {
	return chromium.launch({
		executablePath: chromiumPath(),
		args: [
			"--no-sandbox",
			"--disable-gpu",
			"--disable-background-networking",
			"--disable-component-update",
			"--disable-sync",
			"--no-first-run",
			// Each window would get two pages of the browser's own below its address field, which
			// cost as much as the workbook itself and are never looked at.
			"--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup",
		],
	});
}
