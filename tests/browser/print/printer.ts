import type { Page as ChromiumPage } from "playwright-core";
import type { Page as FirefoxPage } from "puppeteer-core";
import type { SentFile } from "./districtOf.ts";
import { PRINTED, type Sheets } from "./sizesOfData.ts";

export type Format = "A4" | "Letter";

/** What both browsers can be asked, each through its own library. */
export interface Printer {
	readonly name: "Chromium" | "Firefox";
	run<T>(act: (given: T) => unknown, given: T): Promise<unknown>;
	pdf(format: Format): Promise<Uint8Array>;
}

export const chromiumPrinter = (page: ChromiumPage): Printer => ({
	name: "Chromium",
	run: (act, given) => page.evaluate(act as never, given as never),
	pdf: (format) => page.pdf({ format, preferCSSPageSize: true }),
});

export const firefoxPrinter = (page: FirefoxPage): Printer => ({
	name: "Firefox",
	run: (act, given) => page.evaluate(act as never, given),
	// Thousands of units are hundreds of pages, for which half a minute is not enough.
	pdf: (format) => page.pdf({ format, preferCSSPageSize: true, timeout: 0 }),
});

/** Drops the files of a unit on the page, over all others, so that nothing of the demo is left in them; waits until it is there. */
export async function dropUnit(printer: Printer, sheets: Sheets): Promise<void> {
	await printer.run(
		async ({ files, name }) => {
			const dataTransfer = new DataTransfer();
			for (const [name, text] of Object.entries(files))
				dataTransfer.items.add(new File([text], name));
			document.body.dispatchEvent(
				new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
			);
			const until = performance.now() + 20_000;
			while (document.getElementById("unit-name")?.textContent !== name) {
				if (performance.now() > until) throw new Error(`${name} is not opened`);
				await new Promise((next) => setTimeout(next, 20));
			}
		},
		{ files: sheets, name: PRINTED },
	);
}

/** Drops what a district's units sent on *Several units*, and waits until all is read. */
export async function dropDistrict(printer: Printer, files: readonly SentFile[]): Promise<void> {
	await printer.run(async (sent) => {
		const dataTransfer = new DataTransfer();
		for (const { name, base64 } of sent) {
			const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
			dataTransfer.items.add(new File([bytes], name));
		}
		document.body.dispatchEvent(
			new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
		);
		const until = performance.now() + 300_000;
		while (!document.querySelector(".order-part")) {
			if (performance.now() > until) throw new Error("the units are not read");
			await new Promise((next) => setTimeout(next, 50));
		}
	}, files);
}

/** Goes to a page, and waits until it is whole. */
export async function goTo(printer: Printer, file: string): Promise<void> {
	await printer.run(async (sheet) => {
		if (location.hash !== `#${sheet}`) location.hash = `#${sheet}`;
		const until = performance.now() + 20_000;
		const stands = () =>
			document.querySelector("#sheet h1")?.textContent &&
			(document.querySelector(`a[data-sheet="${sheet}"][aria-current=page]`) ||
				location.hash === `#${sheet}`) &&
			!document.body.hasAttribute("data-drawing");
		for (let calm = 0; calm < 3; ) {
			if (performance.now() > until) throw new Error(`${sheet} does not come`);
			await new Promise((next) => setTimeout(next, 30));
			calm = stands() ? calm + 1 : 0;
		}
	}, file);
}

/** Presses a button that prints, as a person does; the browser's own dialog is held back. */
export async function pressPrint(printer: Printer, name: string): Promise<void> {
	await printer.run(async (words) => {
		window.print = () => {};
		const buttons = [...document.querySelectorAll<HTMLButtonElement>("#sheet button")];
		const button = buttons.find((each) => each.textContent === words);
		if (!button) throw new Error(`no button "${words}"`);
		button.click();
		const until = performance.now() + 20_000;
		while (!document.body.classList.contains("on-paper")) {
			if (performance.now() > until) throw new Error(`"${words}" makes no form`);
			await new Promise((next) => setTimeout(next, 20));
		}
	}, name);
}

/** The printer has it. */
export async function putAway(printer: Printer): Promise<void> {
	await printer.run(() => window.dispatchEvent(new Event("afterprint")), undefined);
}
