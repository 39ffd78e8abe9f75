import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { reportCommand } from "../../src/cli/reportCommand.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { started, terminal } from "./terminal.ts";

let place: string;
let unit: string;
let out: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "report-"));
	unit = join(place, "unit");
	out = join(place, "new", "out");
	cpSync("sample-csv", unit, { recursive: true });
});
afterEach(() => rmSync(place, { recursive: true }));

const run = (...given: string[]) => terminal(reportCommand, given);
const rows = () => {
	const { header, rows: all } = readCsv("", readFileSync(join(out, "month.csv"), "utf8")).table;
	return { header, of: (measure: string) => all.find(([name]) => name === measure)?.slice(1) };
};

test("as a person starts it: 0 with the month and its problems written", () => {
	const { status, stdout } = started("report", [unit, "--month", "2027-01", "--out", out]);
	expect(status).toBe(0);
	expect(stdout).toMatch(/^Report written: /);
	expect(readdirSync(out).sort()).toEqual(["month.csv", "problems.csv"]);
}, 60_000);

test("the demo's January: the births of its register, and nothing for what nobody wrote down", async () => {
	expect((await run(unit, "--month", "2027-01", "--out", out)).status).toBe(0);
	const register = readCsv("", readFileSync(join(unit, "records.csv"), "utf8")).table.rows;
	const january = register.filter(([date]) => date?.startsWith("2027-01"));
	// One day of the demo was not recorded.
	const sum = (column: number) =>
		String(january.reduce((all, row) => all + Number(row[column]), 0));
	const { header, of } = rows();
	expect(header).toEqual([
		"measure",
		"unit",
		"planned_expected",
		"planned_set_aside",
		"done",
		"note",
	]);
	const note = `${january.filter(([, births]) => births !== "").length} of 31 days recorded`;
	expect(of("births")).toEqual(["births", "", "", sum(1), note]);
	expect(of("kits_used")?.slice(3)).toEqual([sum(2), note]);
	expect(of("boiled_litres")).toEqual(["L", "", "", "", "not recorded"]);
	expect(of("Gauze swab")?.at(-1)).toContain("not recorded");
});

test("a month of which nothing is known is written, with nothing in it", async () => {
	expect((await run(unit, "--month", "2031-02", "--out", out)).status).toBe(0);
	expect(rows().of("births")).toEqual(["births", "", "", "", "not recorded"]);
});

test("1 where a file cannot be read, with the reason", async () => {
	writeFileSync(join(unit, "uses.csv"), 'at,kit,what\n"2027-01-04 10:00,K1,used\n');
	const { status, stdout } = await run(unit, "--month", "2027-01", "--out", out);
	expect({ status, stdout }).toEqual({
		status: 1,
		stdout: expect.stringMatching(/^Report not made: /),
	});
	const problems = readCsv("", readFileSync(join(out, "problems.csv"), "utf8")).table.rows;
	expect(problems.some((row) => row.includes("uses.csv"))).toBe(true);
});

test("1 where the folder is not there", async () => {
	const { status, stderr } = await run(join(place, "none"), "--month", "2027-01", "--out", out);
	expect(status).toBe(1);
	expect(stderr).not.toBe("");
});

test.each([
	["no month", () => [unit, "--out", out]],
	["no folder to write to", () => [unit, "--month", "2027-01"]],
	["a month that is none", () => [unit, "--month", "2027-13", "--out", out]],
	["a day", () => [unit, "--month", "2027-01-04", "--out", out]],
	["two workbooks", () => [unit, unit, "--month", "2027-01", "--out", out]],
	["an unknown option", () => [unit, "--month", "2027-01", "--out", out, "--week", "3"]],
])("2 with usage: %s", async (_, given) => {
	const { status, stderr } = await run(...given());
	expect(status).toBe(2);
	expect(stderr).toContain("npm run report -- FOLDER --month YYYY-MM --out FOLDER");
});
