import { createRequire } from "node:module";
import { expect } from "vitest";
import type { Printed } from "./paper.ts";

const { version } = createRequire(import.meta.url)("../../package.json") as { version: string };
/** The invented unit of the demo, and a day of its plan, or the month on record. */
const UNIT = "Willow Ford";
const A_DAY = /\b[1-7] Mar 2027|\bFeb 2027/;

/** Sheets whose act can hurt someone, and words of the caution that must be with them on paper. */
const cautioned: Readonly<Record<string, RegExp>> = {
	"this-week": /Chlorine and vinegar never in the same basin/,
	"mixing.csv": /Never let chlorine meet vinegar/,
	"mixing-days.csv": /Never let chlorine meet vinegar/,
	"wall-table.csv": /Never let chlorine meet vinegar/,
	"boiling.csv": /Boiling water scalds/,
	"run-sheet.csv": /chlorine/i,
};

/** The same for what a sheet has for paper besides itself, by the words of its button. */
const cautionedApart: Readonly<Record<string, RegExp>> = {
	"Print first aid for the wall":
		/Never chlorine with vinegar, another acid or a toilet cleaner; never with ammonia or urine: poisonous gas/,
};

/** What no page may be without: unit, dates and version. */
export function expectWholePaper({ pages }: Printed, what: string): void {
	expect(pages.length, what).toBeGreaterThan(0);
	for (const [at, text] of pages.entries()) {
		const page = `${what}, page ${at + 1} of ${pages.length}`;
		expect(text, page).toContain(UNIT);
		expect(text, page).toMatch(A_DAY);
		expect(text, page).toContain(`Basinbook ${version}`);
	}
}

/** The caution of a sheet that has one, in each of these texts. */
export function expectCautions(sheet: string, texts: readonly string[], button = ""): void {
	const caution = cautionedApart[button] ?? cautioned[sheet];
	if (caution) for (const text of texts) expect(text.replace(/\s+/g, " "), sheet).toMatch(caution);
}
