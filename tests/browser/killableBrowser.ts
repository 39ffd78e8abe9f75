import { spawn } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as later } from "node:timers/promises";
import { type BrowserContext, chromium } from "playwright-core";
import { chromiumPath } from "./chromium.ts";

/** A browser that leads a process group of its own, with what it keeps in a folder that outlives it. */
export interface KillableBrowser {
	readonly context: BrowserContext;
	/** All its processes at once, as when the power goes or the system ends them. */
	kill(): Promise<void>;
}

/** @param profile folder for what the browser keeps; the same one again finds it again */
export async function startKillableBrowser(profile: string): Promise<KillableBrowser> {
	const port = join(profile, "DevToolsActivePort");
	rmSync(port, { force: true });
	const browser = spawn(
		chromiumPath(),
		[
			"--headless=new",
			"--no-sandbox",
			"--disable-gpu",
			"--disable-background-networking",
			"--disable-component-update",
			"--disable-sync",
			"--no-first-run",
			"--remote-debugging-port=0",
			`--user-data-dir=${profile}`,
			"about:blank",
		],
		{ detached: true, stdio: "ignore" },
	);
	const ended = new Promise((resolve) => browser.once("exit", resolve));
	const address = () => (existsSync(port) ? readFileSync(port, "utf8").split("\n") : []);
	for (let waits = 0; address().length < 2 && waits < 300; waits++) await later(100);
	const connected = await chromium.connectOverCDP(`ws://127.0.0.1:${address().join("")}`);
	const [context] = connected.contexts();
	if (!context) throw new Error("The browser has no window.");
	return {
		context,
		async kill() {
			if (browser.pid === undefined) throw new Error("The browser never started.");
			if (browser.exitCode === null && browser.signalCode === null)
				process.kill(-browser.pid, "SIGKILL");
			await ended;
		},
	};
}
