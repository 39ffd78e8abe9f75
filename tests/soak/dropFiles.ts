import type { Page } from "playwright-core";
import type { NamedBytes } from "../../src/io/unzip.ts";

/** Where the page says what became of files; several units' orders and two copies have places of their own. */
const SAID = "#told p, .progress [role=status]:not(:empty), .two-copies > *";
/** Answers that let the files in, where the page asks before it replaces what is there. */
const REPLACE = /^(Open it in place of this one|Replace the sheets)$/;

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
	const said = page.locator(SAID).first();
	const asked = page.getByRole("button", { name: REPLACE });
	await said.or(asked).first().waitFor({ state: "attached" });
	if ((await asked.count()) > 0) await asked.click();
	await said.waitFor({ state: "attached" });
}
