import { describe, expect, test } from "vitest";
import { readZip } from "../io/readZip.ts";
import { textBytes } from "./textBytes.ts";
import { type Entry, zipOf } from "./zipOf.ts";

const births = { name: "births.csv", contents: textBytes("date,births,note\n2027-03-01,6,\n") };
const rounds = { name: "rounds.csv", contents: textBytes("start,label\n07:00,\n") };
const link = { attributes: 0o120777 * 0x10000, madeOn: 3 };
const bytes = (...parts: Uint8Array[]) => new Uint8Array(Buffer.concat(parts));
/** A zip of one file whose contents are another zip, so many deep. */
const nested = (depth: number, inner: Uint8Array): Uint8Array =>
	depth === 0 ? inner : nested(depth - 1, zipOf([{ name: "inner.zip", contents: inner }]));
const codes = (zip: Uint8Array) => readZip(zip).problems.map(({ code, weight }) => [code, weight]);

describe("a zip that means mischief, or more than one thing, is refused whole", () => {
	const inner = zipOf([births]);
	test.each<[string, Uint8Array, string]>([
		[
			"an entry inside another",
			zipOf([
				{ ...rounds, contents: inner, method: 0 },
				{ ...births, says: { at: 40 } },
			]),
			"damaged-zip",
		],
		[
			"two entries with one contents",
			zipOf([births, { ...births, name: "births.csv", says: { at: 0 } }]),
			"damaged-zip",
		],
		["a head with another name", zipOf([{ ...births, localName: "rounds.csv" }]), "damaged-zip"],
		["an entry beside the list", zipOf([births, rounds], { says: { entries: 1 } }), "damaged-zip"],
		["fewer entries than the list says", zipOf([births], { says: { entries: 2 } }), "damaged-zip"],
		["a list of another size", zipOf([births], { says: { size: 7 } }), "damaged-zip"],
		["two counts of entries", zipOf([births], { says: { entriesHere: 2 } }), "damaged-zip"],
		["bytes behind the end", zipOf([births], { after: textBytes("\n") }), "damaged-zip"],
		["another zip behind the end", bytes(zipOf([births]), zipOf([rounds])), "damaged-zip"],
		["another zip in the comment", zipOf([births], { comment: zipOf([rounds]) }), "damaged-zip"],
		[
			"bytes between list and end",
			zipOf([births], { beforeEnd: textBytes("secret") }),
			"damaged-zip",
		],
		["bytes in front, places not moved", bytes(textBytes("x"), zipOf([births])), "damaged-zip"],
		["a password", zipOf([{ ...births, flags: 1 }]), "locked-zip"],
		["strong encryption", zipOf([{ ...births, flags: 0x41 }]), "locked-zip"],
		["several parts", zipOf([births], { says: { disk: 1 } }), "other-zip"],
		["ZIP64 by its count", zipOf([births], { says: { entries: 0xffff } }), "other-zip"],
		["ZIP64 by its place", zipOf([births], { says: { at: 0xffffffff } }), "other-zip"],
		[
			"ZIP64 by what stands before its end",
			zipOf([births], { beforeEnd: bytes(textBytes("PK\x06\x07"), new Uint8Array(16)) }),
			"other-zip",
		],
		["ZIP64 by a size", zipOf([{ ...births, says: { size: 0xffffffff } }]), "other-zip"],
		[
			"70,000 entries, said modulo 65,536",
			zipOf(
				Array.from({ length: 1000 }, (_, i) => ({ name: `${i}` })),
				{ says: { entries: 70_000 % 65_536 } },
			),
			"damaged-zip",
		],
		[
			"1,000 entries",
			zipOf(Array.from({ length: 1000 }, (_, i) => ({ name: `${i}.csv` }))),
			"too-many-entries",
		],
		["4 GB, as the list says", zipOf([{ ...births, says: { size: 0xfffffffe } }]), "too-large"],
		[
			"more than it says",
			zipOf([{ name: "births.csv", contents: new Uint8Array(1e7), says: { size: 1e6 } }]),
			"damaged-zip",
		],
		["an end with nothing before it", zipOf([], { says: { entries: 1 } }), "damaged-zip"],
	])("%s", (_what, zip, code) => {
		const { workbook, problems } = readZip(zip);
		expect(problems).toMatchObject([{ code, weight: "error", file: "workbook.zip" }]);
		expect(problems[0]?.message).toMatch(/[Nn]othing was read/);
		expect(workbook.tables).toEqual({});
	});

	test.each([1, 6, 9, 12, 14, 93, 95, 97, 98, 99])("packed by method %i", (method) => {
		expect(codes(zipOf([{ ...births, method }]))).toEqual([["locked-zip", "error"]]);
	});

	test.each([
		["upwards", "../births.csv"],
		["upwards later", "unit/../../births.csv"],
		["upwards and nothing more", ".."],
		["from the root", "/births.csv"],
		["from another computer", "//ward/births.csv"],
		["a drive", "C:/births.csv"],
		["a drive without a slash", "c:births.csv"],
		["upwards by backslashes", "unit\\..\\..\\births.csv"],
		["no name", ""],
	])("a path that leads elsewhere: %s", (_what, name) => {
		expect(codes(zipOf([{ ...births, name }]))).toEqual([["bad-path", "error"]]);
	});
});

describe("an entry that is no ordinary file is left out with a word, and the rest is read", () => {
	const other = { ...rounds, contents: textBytes("start,label\n09:00,\n") };
	test.each<[string, Entry, "error" | "advice"]>([
		["a folder with contents", { ...other, name: "rounds.csv/" }, "error"],
		["a link", { ...other, contents: textBytes("/etc/passwd"), ...link, method: 0 }, "error"],
		["a device", { name: "rounds.csv", attributes: 0o020666 * 0x10000, madeOn: 3 }, "error"],
		["a NUL", { ...other, name: "rounds.csv\0.exe" }, "error"],
		["a line break", { ...other, name: "rounds\n.csv" }, "error"],
		["a name read backwards", { ...other, name: "\u202evsc.sdnuor" }, "error"],
		["marks of reading to the right", { ...other, name: "\u200frounds.csv" }, "error"],
		["a folder's icon", { name: "unit/Icon\r" }, "advice"],
	])("%s", (_what, entry, weight) => {
		const { workbook, problems } = readZip(zipOf([births, entry]));
		expect(problems).toMatchObject([{ code: "left-out-entry", weight, file: "workbook.zip" }]);
		expect(problems[0]?.received).not.toMatch(/[\p{Cc}\p{Cf}]/u);
		expect(Object.keys(workbook.tables)).toEqual(["births.csv"]);
	});

	test("backslashes between folders are how some programs write them", () => {
		const { workbook, problems } = readZip(zipOf([{ ...births, name: "unit\\births.csv" }]));
		expect(problems).toEqual([]);
		expect(workbook.tables["births.csv"]?.rows).toEqual([["2027-03-01", "6", ""]]);
	});
});

describe("a zip that is only unusual is read, and what is not read is named", () => {
	test.each<[string, Uint8Array]>([
		["stored", zipOf([{ ...births, method: 0 }])],
		["sizes that are told elsewhere as well", zipOf([{ ...births, sizesElsewhere: true }])],
		["sizes behind the contents", zipOf([{ ...births, descriptor: true }])],
		["a comment", zipOf([births], { comment: textBytes("from the ward") })],
		[
			"folders",
			zipOf([
				{ name: "my unit/", method: 0 },
				{ ...births, name: "my unit/births.csv" },
			]),
		],
		["a dot in the path", zipOf([{ ...births, name: "./births.csv" }])],
		["room between the entries and the list", zipOf([births], { gap: textBytes("deleted") })],
		["more about an entry", zipOf([{ ...births, extra: Uint8Array.of(0x55, 0x54, 1, 0, 7) }])],
		["made on Unix", zipOf([{ ...births, madeOn: 3, attributes: 0o100644 * 0x10000 }])],
		["a program in front", zipOf([births], { before: textBytes("MZ") })],
	])("%s", (_what, zip) => {
		const { workbook, problems } = readZip(zip);
		expect(problems).toEqual([]);
		expect(workbook.tables["births.csv"]?.rows).toEqual([["2027-03-01", "6", ""]]);
	});

	test.each<[string, Entry[]]>([
		["names of devices", ["CON", "aux.csv", "nul.csv.csv"].map((name) => ({ name }))],
		["a very long name", [{ name: `${"é".repeat(30_000)}.csv` }]],
		["a space or a dot at the end", [{ name: "rounds.csv " }, { name: "rounds.csv." }]],
		["a part behind a colon", [{ name: "rounds.csv:hidden" }]],
		["one name in two spellings of é", [{ name: "re\u0301ve.csv" }, { name: "r\u00e9ve.csv" }]],
		["names that are no UTF-8", [{ name: Uint8Array.of(0xff, 0xfe) }]],
		[
			"a zip in a zip, 40 deep, with a bomb inside",
			[
				{
					name: "inner.zip",
					contents: nested(40, zipOf([{ name: "births.csv", contents: new Uint8Array(2e7) }])),
				},
			],
		],
	])("%s", (_what, others) => {
		const { workbook, problems } = readZip(zipOf([births, ...others]));
		expect(problems.map(({ code }) => code)).toEqual(others.map(() => "unknown-file"));
		for (const { message } of problems) expect(message.length).toBeLessThan(200);
		expect(Object.keys(workbook.tables)).toEqual(["births.csv"]);
	});

	test.each([
		["capitals", "Rounds.CSV"],
		["a folder", "old/rounds.csv"],
	])(
		"two files whose names differ only in %s: neither is read, unless they say the same",
		(_what, name) => {
			const other = textBytes("start,label\n09:30,other\n");
			const two = readZip(zipOf([births, rounds, { name, contents: other }]));
			expect(two.problems).toMatchObject([
				{ code: "doubled-file", file: "rounds.csv", weight: "error" },
			]);
			expect(Object.keys(two.workbook.tables)).toEqual(["births.csv"]);
			const same = readZip(zipOf([births, rounds, { ...rounds, name }]));
			expect(same.problems).toEqual([]);
			expect(Object.keys(same.workbook.tables).sort()).toEqual(["births.csv", "rounds.csv"]);
		},
	);

	test("60 MB of nothing out of 60 kB is one long cell, said so", () => {
		const zip = zipOf([{ name: "births.csv", contents: new Uint8Array(6e7).fill(0x78) }]);
		expect(zip.length).toBeLessThan(1e5);
		expect(codes(zip)).toEqual([["long-cell", "error"]]);
	});

	test("60 MB of cells out of 60 kB is refused before a cell is made", () => {
		const zip = zipOf([{ name: "births.csv", contents: new Uint8Array(6e7).fill(0x2c) }]);
		expect(codes(zip)).toEqual([["too-large", "error"]]);
	});
});
