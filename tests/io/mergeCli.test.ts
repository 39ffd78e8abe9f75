import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { mergeCommand } from "../../src/cli/mergeCommand.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readFolder } from "../../src/io/readFolder.ts";
import { xlsxOf } from "./spreadsheets/xlsxOf.ts";
import { started, terminal } from "./terminal.ts";

let place: string;
let [ours, theirs, out] = ["", "", ""];
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "merge-"));
	[ours, theirs, out] = [join(place, "ours"), join(place, "theirs"), join(place, "out")];
	for (const copy of [ours, theirs]) cpSync("sample-csv", copy, { recursive: true });
});
afterEach(() => rmSync(place, { recursive: true }));

const run = (...given: string[]) => terminal(mergeCommand, given);
const change = (copy: string, file: string, from: string, to: string) => {
	const text = readFileSync(join(copy, file), "utf8");
	expect(text).toContain(from);
	writeFileSync(join(copy, file), text.replace(from, to));
};
const rowsOf = (folder: string, file: string) =>
	readCsv(file, readFileSync(join(folder, file), "utf8")).table.rows;
const START = "records.csv";
const more = (copy: string, line: string) =>
	writeFileSync(
		join(copy, START),
		`${readFileSync(join(copy, START), "utf8").trimEnd()}\n${line}\n`,
	);

test("as a person starts it: 0 with the lines of both", () => {
	more(ours, "2027-06-01,4,1");
	more(theirs, "2027-06-02,7,0");
	const { status, stdout } = started("merge", [ours, theirs, "--out", out]);
	expect(status).toBe(0);
	expect(stdout).toMatch(/1 changes from OURS, 1 from THEIRS, 0 conflicts/);
	const days = rowsOf(out, START).map(([day]) => day);
	expect(days).toEqual(expect.arrayContaining(["2027-06-01", "2027-06-02"]));
	expect(readdirSync(out)).toEqual(expect.arrayContaining(["history.json", "problems.csv"]));
}, 60_000);

test("what both changed differently: 1, ours is kept and both texts stand in problems.csv", async () => {
	change(ours, "records.csv", "2027-01-04,6,", "2027-01-04,8,");
	change(theirs, "records.csv", "2027-01-04,6,", "2027-01-04,9,");
	const { status, stderr } = await run(ours, theirs, "--base", "sample-csv", "--out", out);
	expect(status).toBe(1);
	expect(rowsOf(out, START)[0]).toEqual(["2027-01-04", "8", "0"]);
	const [conflict, ...others] = rowsOf(out, "problems.csv");
	expect(others).toEqual([]);
	expect(conflict?.slice(0, 5)).toEqual(["conflict", "records.csv", "2", "births", "9"]);
	expect(conflict?.[6]).toMatch(/both copies changed it.* Ours: “8”\. Theirs: “9”\. Ours was kept/);
	expect(stderr).toContain("“9”");
});

test("a base tells who changed what; without one what differs is asked", async () => {
	change(theirs, "records.csv", "2027-01-04,6,", "2027-01-04,9,");
	expect((await run(ours, theirs, "--base", "sample-csv", "--out", out)).status).toBe(0);
	expect(rowsOf(out, START)[0]?.[1]).toBe("9");
	const without = await run(ours, theirs, "--out", out);
	expect(without.status).toBe(1);
	expect(without.stderr).toContain("the two copies differ, and nothing tells which");
	expect(without.stderr).not.toContain("both copies changed");
	expect(rowsOf(out, START)[0]?.[1]).toBe("6");
});

// problems.csv: file and line, as an editor counts them.
test("a conflict is at its line, also after cells of several lines", async () => {
	const header = "date,births,kits_used\n";
	const note = '"one\ntwo\r\nthree"';
	for (const [copy, births] of [
		[ours, "8"],
		[theirs, "9"],
	] as const)
		writeFileSync(
			join(copy, START),
			`${header.trimEnd()},"own\nnote"\n2027-01-04,6,0,${note}\n2027-01-05,${births},0,\n`,
		);
	expect((await run(ours, theirs, "--out", out)).status).toBe(1);
	const [line] = rowsOf(out, "problems.csv").map((row) => Number(row[2]));
	const text = readFileSync(join(out, START), "utf8").replaceAll("\r\n", "\n");
	expect(text.split("\n")[(line ?? 0) - 1]).toMatch(/^2027-01-05/);
});

describe("files of a person's own", () => {
	const own = (copy: string, text: string) => writeFileSync(join(copy, "Towels.csv"), text);
	const kept = () => readFileSync(join(out, "Towels.csv"), "utf8");

	// record.md: bringing two copies together never loses a line.
	test("of either copy come along, in a folder and in a zip", async () => {
		own(theirs, "day,towels\n1,20\n");
		writeFileSync(join(ours, "bed.txt"), "painted");
		expect((await run(ours, theirs, "--out", out)).status).toBe(0);
		expect(kept()).toBe("day,towels\n1,20\n");
		expect(readFileSync(join(out, "bed.txt"), "utf8")).toBe("painted");
		const zip = join(place, "both.zip");
		expect((await run(ours, theirs, "--out", zip)).status).toBe(0);
		const again = await run(zip, ours, "--out", join(place, "again"));
		expect(again.status).toBe(0);
		expect(readFileSync(join(place, "again", "Towels.csv"), "utf8")).toBe("day,towels\n1,20\n");
	});

	test.each([
		["the same", "a\n1\n", "a\n1\n", undefined, 0, "a\n1\n"],
		["two", "a\n1\n", "a\n2\n", undefined, 1, "a\n1\n"],
		["two, both others than before", "a\n1\n", "a\n2\n", "a\n3\n", 1, "a\n1\n"],
		["changed in theirs", "a\n1\n", "a\n2\n", "a\n1\n", 0, "a\n2\n"],
		["changed in ours", "a\n1\n", "a\n2\n", "a\n2\n", 0, "a\n1\n"],
	] as const)("of one name: %s", async (_what, our, their, before, status, stays) => {
		own(ours, our);
		own(theirs, their);
		const base = join(place, "base");
		cpSync("sample-csv", base, { recursive: true });
		if (before) own(base, before);
		const found = await run(ours, theirs, ...(before ? ["--base", base] : []), "--out", out);
		expect([found.status, kept()]).toEqual([status, stays]);
		expect(rowsOf(out, "problems.csv").map((row) => row.slice(0, 2))).toEqual(
			status === 1 ? [["conflict", "Towels.csv"]] : [],
		);
	});

	test("in a spreadsheet stay there, and it is said", async () => {
		const sheet = '<row r="1"><c r="A1" t="inlineStr"><is><t>20 towels</t></is></c></row>';
		writeFileSync(join(theirs, "towels.xlsx"), xlsxOf({ towels: sheet }));
		const { status, stderr } = await run(ours, theirs, "--out", out);
		expect(status).toBe(0);
		expect(stderr).toMatch(/^Advice, towels\.xlsx.*not part of a workbook/);
		expect(rowsOf(out, "problems.csv")).toHaveLength(1);
	});
});

test("a zip where the name ends so; it goes on from both", async () => {
	more(ours, "2027-06-01,4,1");
	more(theirs, "2027-06-02,7,0");
	const zip = join(place, "both.zip");
	expect((await run(ours, theirs, "--out", zip)).status).toBe(0);
	const { problems, history, workbook } = await readFolder(zip);
	expect(history?.saves).toHaveLength(2);
	expect(workbook.tables[START]?.rows.length).toBe(rowsOf("sample-csv", START).length + 2);
	expect(problems.map(({ code }) => code)).toEqual(["result-file"]);
	const again = await run(zip, theirs, "--out", out);
	expect(again.stdout).toMatch(/1 changes from OURS, 0 from THEIRS, 0 conflicts/);
});

test("copies brought together by their base, and then once more with one of them: no line twice, nothing asked", async () => {
	more(ours, "2027-06-01,4,1");
	more(theirs, "2027-06-02,7,0");
	const zip = join(place, "both.zip");
	expect((await run(ours, theirs, "--base", "sample-csv", "--out", zip)).status).toBe(0);
	const both = (await readFolder(zip)).workbook.tables[START]?.rows;
	for (const copy of [ours, theirs]) {
		const { status } = await run(zip, copy, "--out", out);
		expect(status).toBe(0);
		expect(rowsOf(out, START)).toEqual(both);
	}
});

test.each([
	["no zip", (path: string) => writeFileSync(path, "PK not a zip")],
	["nothing", () => undefined],
])("a copy that cannot be read (%s): 1, said, and nothing is written", async (_, make) => {
	const damaged = join(place, "damaged.zip");
	make(damaged);
	const { status, stderr } = await run(ours, damaged, "--out", out);
	expect(status).toBe(1);
	expect(stderr).toMatch(/damaged\.zip/);
	expect(stderr).toContain("Nothing was written");
	expect(readdirSync(place)).not.toContain("out");
});

test("copies of two units are said to be so", async () => {
	change(
		theirs,
		"unit.csv",
		/unit_name,[^\n\r]*/.exec(readFileSync(join(theirs, "unit.csv"), "utf8"))?.[0] ?? "",
		"unit_name,Elsewhere",
	);
	const { status, stderr } = await run(ours, theirs, "--out", out);
	expect(status).toBe(1);
	expect(stderr).toMatch(/two units, “.+” and “Elsewhere”/);
});

test("a single sheet is of no other unit", async () => {
	const single = join(place, "single");
	cpSync("sample-csv/uses.csv", join(single, "uses.csv"));
	const { status, stderr } = await run(ours, single, "--out", out);
	expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
});

test.each([
	[[]],
	[["one"]],
	[["one", "two"]],
	[["one", "two", "three", "--out", "x"]],
	[["one", "two", "--dates", "no", "--out", "x"]],
])("wrong arguments: 2 and the usage (%j)", async (given) => {
	const { status, stderr } = await run(...given);
	expect(status).toBe(2);
	expect(stderr).toContain("npm run merge");
});
