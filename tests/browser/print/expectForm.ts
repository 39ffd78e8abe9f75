import { createRequire } from "node:module";
import { expect } from "vitest";
import type { Form } from "./forms.ts";
import type { Paper } from "./readPaper.ts";

const { version } = createRequire(import.meta.url)("../../../package.json") as { version: string };
const UNIT = /Willow Ford/;
const A_DAY = /\b[A-Z][a-z]{2} 20\d\d\b|Date: _/;
/** The margin in points, less what a browser rounds off. */
const MARGIN = 24;
/** Rows of a part, and its heading: of longer ones Firefox lays out the rest for each page anew. */
const ROWS_TOGETHER = 21;

/**
 * That each page of a form says on its own whose it is, of which days, by which version, which
 * of how many it is, what can hurt, and whose word comes first; that none is turned, none cut,
 * and none has nothing but its head and its end.
 */
export function expectForm(paper: Paper, form: Form, what: string): void {
	const { pages } = paper;
	expect(pages.length, what).toBeGreaterThan(0);
	for (const [at, page] of pages.entries()) {
		const where = `${what}, page ${at + 1} of ${pages.length}`;
		expect(page.text, where).toMatch(form.whose ?? UNIT);
		expect(page.text, where).toMatch(A_DAY);
		expect(page.text, where).toContain(`Basinbook ${version}`);
		if (form.caution) expect(page.text, where).toMatch(form.caution);
		if (!form.endless?.test(page.text)) expect(page.text, where).toContain(paper.end);
		// Firefox has no margin boxes: there its own footer counts the pages.
		if (paper.browser === "Chromium")
			expect(page.text, where).toMatch(new RegExp(`${at + 1} ?/ ?${pages.length}`));
		expect(page.width > page.height, where).toBe(form.lies ?? false);
		expect(page.left, where).toBeGreaterThan(MARGIN);
		expect(page.right, where).toBeLessThan(page.width - MARGIN);
		expect(page.bottom, where).toBeLessThan(page.height - MARGIN / 3);
		expect(page.words, where).toBeGreaterThan(paper.wordsOfFrame);
	}
	expect(paper.cut, what).toEqual([]);
	expect(paper.rowsTogether, what).toBeLessThanOrEqual(ROWS_TOGETHER);
}
