import {
	cpSync,
	existsSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { planCommand } from "../../src/cli/planCommand.ts";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readFolder } from "../../src/io/readFolder.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { started, terminal } from "./terminal.ts";

let place: string;
let unit: string;
let out: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "plan-"));
	unit = join(place, "unit");
	out = join(place, "new", "out");
	cpSync("sample-csv", unit, { recursive: true });
});
afterEach(() => rmSync(place, { recursive: true }));

async function run(...given: string[]) {
	const { stderr, ...ended } = await terminal(planCommand, given);
	return { ...ended, stderr: stderr.split("\n").filter((line) => line !== "") };
}
const problemsIn = (folder: string) =>
	readCsv("problems.csv", readFileSync(join(folder, "problems.csv"), "utf8")).table.rows;
const change = (file: string, from: string | RegExp, to: string) =>
	writeFileSync(join(unit, file), readFileSync(join(unit, file), "utf8").replace(from, to));
/** Births of the first day as the golden workbook has them: a bad cell elsewhere changes nothing there. */
const goldenBirths = readCsv("", readFileSync("tests/golden/sample/day-plan.csv", "utf8")).table
	.rows[0]?.[1];
const results = [
	...computedSheets.map(({ file }) => file),
	"problems.csv",
	"datapackage.json",
].sort();

describe("as a person starts it", () => {
	test("0 with the plan written, and a line that says so", () => {
		const { status, stdout } = started("plan", [unit, "--out", out]);
		expect(status).toBe(0);
		expect(stdout).toMatch(/^Plan made: \d+ files in /);
		expect(readdirSync(out).sort()).toEqual(results);
	}, 60_000);

	test("2 with usage, where nothing but the name is given", () => {
		const { status, stdout, stderr } = started("plan", []);
		expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
		expect(stderr).toContain("npm run plan -- FOLDER --out FOLDER");
	}, 60_000);
});

describe("plan made", () => {
	test("0, every computed sheet, and the workbook's folder left alone", async () => {
		const before = readdirSync(unit);
		expect(await run(unit, "--out", out)).toMatchObject({ status: 0 });
		expect(readdirSync(out).sort()).toEqual(results);
		expect(readdirSync(unit)).toEqual(before);
	});

	test("a zip gives the same files as its folder", async () => {
		const zip = join(place, "unit.zip");
		writeFileSync(zip, zipWorkbook((await readFolder(unit)).workbook));
		await run(unit, "--out", out);
		expect((await run(zip, "--out", join(place, "other"))).status).toBe(0);
		for (const name of results)
			expect(readFileSync(join(place, "other", name), "utf8")).toBe(
				readFileSync(join(out, name), "utf8"),
			);
	});

	test("into the workbook's own folder, where that is asked for", async () => {
		const first = await run(unit, "--out", unit);
		expect(first.status).toBe(0);
		const { resources } = JSON.parse(readFileSync(join(unit, "datapackage.json"), "utf8"));
		const paths = resources.map(({ path }: { path: string }) => path);
		expect(paths).toEqual(expect.arrayContaining(["unit.csv", "day-plan.csv"]));
		expect((await run(unit, "--out", unit)).stderr).toEqual([
			expect.stringMatching(/^Advice: Results of an earlier plan/),
			...first.stderr,
		]);
	});
});

describe("plan not made", () => {
	test.each([
		["-1", "-1"],
		["1e9", "1e9"],
		["two", "two"],
	])("1 and the file line for births %s; the rest is still written", async (written, received) => {
		change("births.csv", "2027-03-03,8", `2027-03-03,${written}`);
		const { status, stderr } = await run(unit, "--out", out);
		expect(status).toBe(1);
		expect(stderr).toEqual(
			expect.arrayContaining([expect.stringMatching(/^Error, births\.csv line 4, births: /)]),
		);
		expect(problemsIn(out)).toContainEqual(
			expect.arrayContaining(["births.csv", "4", "births", received, "error"]),
		);
		expect(readdirSync(out).sort()).toEqual(results);
		const days = readCsv("", readFileSync(join(out, "day-plan.csv"), "utf8")).table;
		const births = days.rows.map((row) => row[days.header.indexOf("births_expected")]);
		expect(births[0]).toBe(goldenBirths);
		expect(births[2]).toBe("");
	});

	// workbook-format.md: 1 where the plan could not be made; an empty list of fires is no plan of them.
	test.each([
		["room_c", "boiling.csv", "litres"],
		["pot_litres", "boiling.csv", "light_by"],
		["altitude_m", "water.csv", "fuel_expected"],
		["review_days", "order.csv", "order_packs"],
	])("1 where nobody can read %s, for which %s has no %s", async (key, file, column) => {
		change("unit.csv", new RegExp(`^${key},.*`, "m"), `${key},abc`);
		const { status, stdout } = await run(unit, "--out", out);
		expect([status, stdout]).toEqual([1, expect.stringContaining("Plan not made")]);
		const { header, rows } = readCsv("", readFileSync(join(out, file), "utf8")).table;
		expect(rows[0]?.[header.indexOf(column)]).toBe("");
	});

	test("0 where what cannot be read leaves no hole, or what can be read cannot be done in time", async () => {
		change("unit.csv", "key,value", "key,value\nworker_hours_a_day,abc");
		change("unit.csv", /^room_c,.*/m, "room_c,37");
		const { status, stderr } = await run(unit, "--out", out);
		expect(status).toBe(0);
		expect(stderr.filter((line) => line.startsWith("Error"))).not.toEqual([]);
	});

	test("each problem stands once, by file and line", async () => {
		change("births.csv", "2027-03-03,8", "2027-03-03,many");
		change("births.csv", "2027-03-01,", "2027-02-30,");
		change("kits.csv", "in_service", "somewhere");
		await run(unit, "--out", out);
		const rows = problemsIn(out).map(([code, file, line, column, received]) =>
			[file, Number(line), column, code, received].join(" "),
		);
		expect(new Set(rows).size).toBe(rows.length);
		const places = problemsIn(out).map(
			([, file = "", line]) => `${file} ${String(line).padStart(6, "0")}`,
		);
		expect(places).toEqual([...places].sort());
	});

	test.each([
		["a folder that is not there", "nowhere", "unreadable"],
		["a folder without a workbook", "empty", "no-workbook"],
		["a file that is no zip", "letter.zip", "not-a-zip"],
	])("1 for %s, with problems.csv", async (_what, name, code) => {
		cpSync(join(unit, "README.md"), join(place, "empty", "README.md"), { recursive: true });
		writeFileSync(join(place, "letter.zip"), "Dear storekeeper");
		const { status, stderr } = await run(join(place, name), "--out", out);
		expect(status).toBe(1);
		expect(stderr).toHaveLength(1);
		expect(problemsIn(out).map(([found]) => found)).toEqual([code]);
	});

	test("1 where an optional file cannot be read: without it the numbers would be others", async () => {
		writeFileSync(join(unit, "hours.csv"), Buffer.from([0xff, 0x00, 0xe9]));
		expect((await run(unit, "--out", out)).status).toBe(1);
		expect(problemsIn(out).map(([found]) => found)).toContain("not-text");
	});

	test("1 where nothing can be written", async () => {
		const { status, stderr } = await run(unit, "--out", join(unit, "births.csv"));
		expect(status).toBe(1);
		expect(stderr.at(-1)).toMatch(
			/could not be written to .*births\.csv: a file stands where a folder is needed/,
		);
	});

	test("hostile text stays one harmless line", async () => {
		change("births.csv", "2027-03-03,8", '2027-03-03,"\u001b[31m\nError, all is lost"');
		const { stderr } = await run(unit, "--out", out);
		expect(stderr.every((line) => /^(Error|Advice)[,:] ?/.test(line))).toBe(true);
		expect(stderr.join("\n")).not.toContain("\u001b");
		expect(stderr.filter((line) => line.startsWith("Error, all"))).toEqual([]);
	});
});

describe("wrong arguments", () => {
	test.each<[string, string[]]>([
		["none", []],
		["no --out", ["sample-csv"]],
		["no folder", ["--out", "x"]],
		["two folders", ["sample-csv", "sample-csv", "--out", "x"]],
		["an unknown option", ["sample-csv", "--out", "x", "--fast"]],
		["--out without a folder", ["sample-csv", "--out"]],
	])("2 with usage for %s, and nothing written", async (_what, given) => {
		const { status, stderr } = await run(...given);
		expect(status).toBe(2);
		expect(stderr.join("\n")).toContain("npm run plan -- FOLDER --out FOLDER");
		expect(existsSync("x")).toBe(false);
	});
});
