import type { Page } from "playwright-core";
import type { NamedBytes } from "../../src/io/unzip.ts";

/** Where the page says what became of files; several units' orders have a place of their own. */
const SAID = "#told p, .progress [role=status]:not(:empty)";

/** Drops files on the page and waits until the page has said what became of them. */
export async function dropFiles(page: Page, files: readonly NamedBytes[]): Promise<void> {
	const given = files.map(({ name, bytes }) => ({
		name,
		text: Buffer.from(bytes).toString("base64"),
	}));
	await page.evaluate(
		([all, said]) => {
			for (const words of document.querySelectorAll(said)) words.replaceChildren();
			for (const words of document.querySelectorAll("#told p")) words.remove();
			const dataTransfer = new DataTransfer();
			for (const { name, text } of all)
				dataTransfer.items.add(
					new File([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))], name),
				);
			document.body.dispatchEvent(
				new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
			);
		},
		[given, SAID] as const,
	);
	await page.locator(SAID).first().waitFor({ state: "attached" });
}
