import { afterAll, describe, expect, test } from "vitest";
import { readTable } from "../../src/core/read/readTable.ts";
import { birthsSheet } from "../../src/core/sheets/births.ts";
import { checkDataPackage } from "../../src/io/checkDataPackage.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { unzip } from "../../src/io/unzip.ts";
import { pasted } from "../../src/ui/grid/pasted.ts";
import { Coverage } from "./coverage.ts";
import { zipOf } from "./zipOf.ts";

const csv = (text: string) => readTable(birthsSheet, readCsv("births.csv", text).table);
const SMALL = 400;
const TIMES = 4;
/** Room for what does not grow, and for sorting. */
const MOST = TIMES * 1.5;

describe("an input four times as long takes about four times the work, counted in blocks that ran", () => {
	const coverage = new Coverage();
	afterAll(() => coverage.stop());
	const work = (act: () => unknown) => {
		coverage.work();
		act();
		return coverage.work();
	};

	test.each<[string, (n: number) => unknown]>([
		["rows", (n) => csv(`date,births,note\n${"2027-03-01,6,x\n".repeat(n)}`)],
		["bad rows", (n) => csv(`date,births,note\n${"x,y,z\n".repeat(n)}`)],
		["blank lines", (n) => csv(`date,births,note\n${"\n".repeat(n)}`)],
		["lines that end in all ways", (n) => csv(`date,births,note\n${"x,y\r\nz\ra\n".repeat(n)}`)],
		["quoted cells", (n) => csv(`date,births,note\n${'"x","y","z"\n'.repeat(n)}`)],
		["doubled quote marks", (n) => csv(`date\n"${'""'.repeat(n)}"\n`)],
		["loose quote marks", (n) => csv(`date\n"x${'" '.repeat(n)}${" ".repeat(n)}\n`)],
		["a quote mark never closed", (n) => csv(`date\n"${"x,y\n".repeat(n)}`)],
		["cells in a row", (n) => csv(`date,births,note\n${"x,".repeat(n)}\n`)],
		[
			"columns",
			(n) => readCsv("x.csv", `${Array.from({ length: n / 2 }, (_, i) => `c${i}`).join()}\n`),
		],
		["long cells", (n) => csv(`date\n${`${"x".repeat(100_001)}\n`.repeat(n / 40)}`)],
		[
			"entries",
			(n) => unzip("x.zip", zipOf(Array.from({ length: n / 8 }, (_, i) => ({ name: `${i}` })))),
		],
		[
			"a list of contents",
			(n) => unzip("x.zip", zipOf(Array.from({ length: n }, (_, i) => ({ name: `${i}` })))),
		],
		["brackets", (n) => checkDataPackage("d", "[]".repeat(n))],
		["a pasted block", (n) => pasted("x\ty\n".repeat(n), 0, 0, 5)],
		["a pasted quote mark never closed", (n) => pasted(`"${"x\ty\n".repeat(n)}`, 0, 0, 5)],
	])("%s", (_what, read) => {
		read(SMALL);
		const few = work(() => read(SMALL));
		const many = work(() => read(SMALL * TIMES));
		expect(few).toBeGreaterThan(0);
		expect(many / few).toBeLessThan(MOST);
	});
});
