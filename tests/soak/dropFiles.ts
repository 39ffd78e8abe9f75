import type { Page } from "playwright-core";
import type { NamedBytes } from "../../src/io/unzip.ts";
import type { Chance } from "../fuzz/chance.ts";

/** Where the page says what became of files; several units' orders and two copies have places of their own. */
const SAID = "#told p, .progress [role=status]:not(:empty), .two-copies > *";
/** Answers that let the files in, where the page asks before it replaces what is there. */
const REPLACE = /^(Open it in place of this one|Replace the sheets)$/;

/**
 * Drops files on the page, answers what it asks, and waits until it has said what became of them.
 *
 * @param chance picks the answers; without it the files are let in
 */
export async function dropFiles(
	page: Page,
	files: readonly NamedBytes[],
	chance?: Chance,
): Promise<void> {
	const given = files.map(({ name, bytes }) => ({
		name,
		text: Buffer.from(bytes).toString("base64"),
	}));
	await page.evaluate(
		([all, said]) => {
			for (const words of document.querySelectorAll<HTMLElement>(said)) words.dataset.before = "";
			for (const words of document.querySelectorAll(".progress [role=status]"))
				words.replaceChildren();
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
	const said = page.locator(`:is(${SAID}):not(p[data-before], .two-copies > [data-before])`);
	const asked = page.locator("dialog[open]");
	for (;;) {
		await said.or(asked).first().waitFor({ state: "attached" });
		if ((await asked.count()) === 0) return;
		const answers = chance
			? asked.getByRole("button").nth(chance.below(await asked.getByRole("button").count()))
			: asked.getByRole("button", { name: REPLACE });
		await answers.click();
	}
}
