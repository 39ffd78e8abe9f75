import type { BrowserContext, Locator } from "playwright-core";
import type { WorkbookPage } from "../browser/workbookPage.ts";

declare global {
	/** From each key to the end of the frame after it, in ms. */
	var keysPainted: number[];
}

/** Has the page note for each key how long it took until the next frame was painted. */
export async function noteKeys(context: BrowserContext): Promise<void> {
	await context.addInitScript(() => {
		globalThis.keysPainted = [];
		addEventListener(
			"keydown",
			({ timeStamp }) =>
				requestAnimationFrame(() => {
					// What is posted in a frame is read after that frame has been painted.
					const { port1, port2 } = new MessageChannel();
					port1.onmessage = () => keysPainted.push(performance.now() - timeStamp);
					port2.postMessage(undefined);
				}),
			true,
		);
	});
}

/** Types a letter into a field and takes it out again. @returns ms until the letter was painted */
export async function keyMs({ page }: WorkbookPage, field: Locator): Promise<number> {
	await field.focus();
	const before = await page.evaluate(() => keysPainted.length);
	await page.keyboard.press("u");
	await page.keyboard.press("Backspace");
	return page.evaluate(
		(at) =>
			new Promise<number>((found) => {
				const look = () => {
					const ms = keysPainted[at];
					if (ms === undefined) setTimeout(look, 5);
					else found(ms);
				};
				look();
			}),
		before,
	);
}
