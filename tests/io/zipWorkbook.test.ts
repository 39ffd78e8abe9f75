import fc from "fast-check";
import { unzipSync, type Zippable, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { withoutBlankEnds } from "../../src/core/withoutBlankEnds.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { readFiles } from "../../src/io/readFiles.ts";
import { readFolder } from "../../src/io/readFolder.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { readZip } from "./readZip.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const births = bytes("date,births,note\n2027-03-01,6,\n");
const zipOf = (files: Zippable) => zipSync(files, { level: 6 });
const withoutLines = ({ tables }: Workbook) =>
	Object.fromEntries(
		Object.entries(tables).map(([file, { header, rows }]) => [file, { header, rows }]),
	);

/** Where the zip's directory has its entry number `index`. */
function directoryAt(zip: Uint8Array, index = 0): number {
	const view = new DataView(zip.buffer, zip.byteOffset);
	let at = view.getUint32(zip.length - 22 + 16, true);
	for (; index > 0; index--)
		at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true);
	return at;
}

function changed(zip: Uint8Array, change: (view: DataView, directory: number) => void): Uint8Array {
	const copy = zip.slice();
	change(new DataView(copy.buffer), directoryAt(copy));
	return copy;
}

/** Like sample names, but of the same length, so that names can be put in place inside a zip. */
function renamed(zip: Uint8Array, from: string, to: string): Uint8Array {
	const latin = Buffer.from(zip).toString("latin1").replaceAll(from, to);
	return new Uint8Array(Buffer.from(latin, "latin1"));
}

let sample: Workbook;
beforeAll(async () => {
	sample = (await readFolder("sample-csv")).workbook;
});

describe("a workbook as one zip", () => {
	test("the sample comes back as it was, without a word", () => {
		const { workbook, problems } = readZip(zipWorkbook(sample));
		expect(withoutLines(workbook)).toEqual(withoutLines(sample));
		expect(problems).toEqual([]);
	});

	test("with a plan in it, the results are passed over without a word", () => {
		const { workbook, problems } = readZip(zipWorkbook(sample, plan(sample)));
		expect(withoutLines(workbook)).toEqual(withoutLines(sample));
		expect(problems).toEqual([]);
	});

	test("the same workbook gives the same bytes", () => {
		expect(zipWorkbook(sample, plan(sample))).toEqual(zipWorkbook(sample, plan(sample)));
		const turned = { tables: Object.fromEntries(Object.entries(sample.tables).reverse()) };
		expect(zipWorkbook(turned)).toEqual(zipWorkbook(sample));
	});

	test("any text comes back as it was", () => {
		const rows = fc.array(fc.array(fc.string({ unit: "binary" }), { maxLength: 3 }));
		fc.assert(
			fc.property(rows, (some) => {
				const workbook = { tables: { "births.csv": { header: ["date", "note"], rows: some } } };
				const { header, rows: kept } = withoutBlankEnds(workbook.tables["births.csv"]);
				expect(withoutLines(readZip(zipWorkbook(workbook)).workbook)).toEqual({
					"births.csv": { header, rows: kept },
				});
			}),
		);
	});

	test("files in a folder of the zip are found, and clutter is passed over", () => {
		const zip = zipOf({
			"my unit": { "Births.CSV": births },
			__MACOSX: { "._Births.CSV": births },
		});
		const { workbook, problems } = readZip(zip);
		expect(Object.keys(workbook.tables)).toEqual(["births.csv"]);
		expect(problems).toEqual([]);
	});
});

describe("a zip that is refused whole", () => {
	const zip = zipOf({ "births.csv": births });
	const many = Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`note-${i}.txt`, births]));
	const big = new Uint8Array(40 * 1024 * 1024);
	const noise = bytes(Array.from({ length: 3000 }, (_, i) => Math.sin(i)).join());
	test.each<[string, Uint8Array, string]>([
		["no bytes", new Uint8Array(), "not-a-zip"],
		["a text", bytes("date,births\n2027-03-01,6\n".repeat(9)), "not-a-zip"],
		["cut short", zip.subarray(0, zip.length - 30), "damaged-zip"],
		["its beginning cut away", zip.subarray(20), "damaged-zip"],
		[
			"a byte changed",
			changed(zipOf({ "births.csv": noise }), (v) => v.setUint8(300, v.getUint8(300) ^ 1)),
			"damaged-zip",
		],
		[
			"a stored byte changed",
			changed(zipSync({ "births.csv": births }, { level: 0 }), (v) => v.setUint8(60, 0x39)),
			"damaged-zip",
		],
		["a wrong checksum", changed(zip, (v, at) => v.setUint32(at + 16, 7, true)), "damaged-zip"],
		["a path upwards", renamed(zip, "births.csv", "../rth.csv"), "bad-path"],
		["an absolute path", renamed(zip, "births.csv", "/irths.csv"), "bad-path"],
		["a drive", renamed(zip, "births.csv", "c:rths.csv"), "bad-path"],
		["upwards by backslashes", renamed(zip, "births.csv", "..\\rhs.csv"), "bad-path"],
		["201 files", zipOf(many), "too-many-entries"],
		["a bomb that says so", zipOf({ "births.csv": big, "notes.csv": big }), "too-large"],
		[
			"a bomb that lies",
			changed(zipOf({ "births.csv": big }), (v, at) => v.setUint32(at + 24, 100, true)),
			"damaged-zip",
		],
		[
			"a file that is smaller than it says",
			changed(zip, (v, at) => v.setUint32(at + 24, 1e6, true)),
			"damaged-zip",
		],
		[
			"one name twice",
			renamed(zipOf({ "births.csv": births, "bixths.csv": births }), "bixths.csv", "births.csv"),
			"doubled-file",
		],
		["a password", changed(zip, (v, at) => v.setUint16(at + 8, 1, true)), "locked-zip"],
		[
			"another way of packing",
			changed(zip, (v, at) => {
				for (const place of [8, at + 10]) v.setUint16(place, 14, true);
			}),
			"locked-zip",
		],
	])("%s", (_what, given, code) => {
		const { workbook, problems } = readZip(given);
		expect(problems).toMatchObject([{ code, weight: "error", file: "workbook.zip" }]);
		expect(problems[0]?.message).toMatch(/nothing was read|Nothing was read/);
		expect(workbook.tables).toEqual({});
	});

	test("one name in two folders with other contents: neither is read, the others are", () => {
		const two = zipOf({
			a: { "births.csv": births, "rounds.csv": bytes("start,label\n07:00,\n") },
			b: { "births.csv": bytes("date,births,note\n2027-03-01,7,\n") },
		});
		const { workbook, problems } = readZip(two);
		expect(Object.keys(workbook.tables)).toEqual(["rounds.csv"]);
		expect(problems).toMatchObject([{ code: "doubled-file", file: "births.csv", weight: "error" }]);
	});

	test("random damage never throws and never gives other text", () => {
		const whole = withoutLines(readZip(zip).workbook);
		fc.assert(
			fc.property(fc.nat(zip.length - 1), fc.integer({ min: 1, max: 255 }), (at, flip) => {
				const copy = zip.slice();
				copy[at] = (copy[at] ?? 0) ^ flip;
				const { workbook } = readZip(copy);
				const found = workbook.tables["births.csv"];
				if (found) expect({ header: found.header, rows: found.rows }).toEqual(whole["births.csv"]);
			}),
			{ numRuns: 2000 },
		);
	});
});

test("the points that saving writes do not tell what a comma meant that was typed beside them", () => {
	const header = ["item", "group", "measure", "pack_size", "pack_price"];
	// A comma that may part thousands is not understood where it is typed, and stays.
	const rows = [["soap", "other", "mL", "1,000", "2,5"]];
	const saved = zipWorkbook({ tables: { "items.csv": { header, rows } } });
	const { workbook, questions } = readZip(saved);
	expect(workbook.tables["items.csv"]?.rows).toEqual([rows[0]?.with(4, "2.5")]);
	expect(questions).toEqual([]);
	expect(plan(workbook).problems).toContainEqual(
		expect.objectContaining({ code: "bad-cell", column: "pack_size", received: "1,000" }),
	);
	const { "items.csv": apart } = unzipSync(saved);
	const alone = readFiles([{ name: "items.csv", bytes: apart as Uint8Array }]);
	expect(alone.workbook.tables["items.csv"]?.rows[0]?.[3]).toBe("1000");
});

test.each([
	["records.csv", "kits_used", "0,5", "whole"],
	["lots.csv", "quantity", "-2,5", "0 or more"],
	["lots.csv", "received_on", "28/02/1850", "a date of a year near this one"],
])(
	"what %s does not take as %s in any form (%s is not %s) is the same text once saved and opened",
	(file, column, text) => {
		const header = ["item", column, "note"];
		const saved = zipWorkbook({ tables: { [file]: { header, rows: [["soap", text, ""]] } } });
		const { workbook, questions, problems } = readZip(saved);
		expect(workbook.tables[file]?.rows).toEqual([["soap", text, ""]]);
		expect(questions).toEqual([]);
		expect(problems.map(({ code }) => code)).not.toContain("rewritten");
	},
);
