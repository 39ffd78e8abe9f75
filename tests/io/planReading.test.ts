import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { planCommand } from "../../src/cli/planCommand.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { spreadsheetOf } from "./locales/spreadsheetOf.ts";
import { terminal } from "./terminal.ts";

let place: string;
let unit: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "reading-"));
	unit = join(place, "unit");
	cpSync("sample-csv", unit, { recursive: true });
});
afterEach(() => rmSync(place, { recursive: true }));

const write = (name: string, contents: string | Uint8Array) =>
	writeFileSync(join(unit, name), contents);
async function run(...options: string[]) {
	const out = join(place, "out");
	const { status, stderr } = await terminal(planCommand, [unit, "--out", out, ...options]);
	const read = (file: string) => readCsv(file, readFileSync(join(out, file), "utf8")).table;
	return { status, stderr, read };
}
const sampleDays = readFileSync("tests/golden/sample/day-plan.csv", "utf8");

test("a folder with records.xlsx in place of records.csv plans as with the CSV", async () => {
	const { table } = readCsv("", readFileSync(join(unit, "records.csv"), "utf8"));
	rmSync(join(unit, "records.csv"));
	write("records.xlsx", spreadsheetOf({ "records.csv": table }));
	const { status, stderr, read } = await run();
	expect(status).toBe(0);
	// The sample's own advice on two kits that are not counted and seven items counted long ago, and nothing of the reading.
	expect(stderr.trim().split("\n")).toEqual([
		...Array(2).fill(expect.stringMatching(/^Advice, kits\.csv/)),
		...Array(7).fill(expect.stringMatching(/^Advice, lots\.csv .* last counted on /)),
	]);
	expect(read("day-plan.csv")).toEqual(readCsv("", sampleDays).table);
});

// workbook-format.md: numbers with a decimal point; 5125 births a day are over what the column takes.
test.each([
	["unit.csv", /^births_per_day,.*/m, "births_per_day,5.125"],
	["unit.csv", /^heat_kw,.*/m, "heat_kw,2.375"],
	["births.csv", "2027-03-03,8", "2027-03-03,5.125"],
	["usage.csv", "kit,8", "kit,2.125"],
	["items.csv", "100,2.4", "100,1.125"],
	["chlorine.csv", "liquid,3.5", "liquid,5.250"],
])(
	"three decimals in %s are no thousands, with the description or without",
	async (file, from, to) => {
		const text = readFileSync(join(unit, file), "utf8");
		expect(text.replace(from, to)).not.toBe(text);
		write(file, text.replace(from, to));
		const described = await run();
		expect(described.stderr).not.toContain("nothing in the files tells which");
		expect(described.status).toBe(0);
		rmSync(join(unit, "datapackage.json"));
		const alone = await run();
		expect(alone.status).toBe(0);
		for (const sheet of ["day-plan.csv", "order.csv"])
			expect(alone.read(sheet)).toEqual(described.read(sheet));
	},
);

describe("what the files leave open ends the command with both readings", () => {
	test("numbers", async () => {
		write(
			"lots.csv",
			"item,lot,quantity,made_on,received_on,arrives_on,expires_on\nLiquid soap,S-1,1.400,,2027-02-20,,\n",
		);
		const open = await run();
		expect(open.status).toBe(1);
		expect(open.stderr).toContain("“1.400” can be read as 1.400 or as 1400");
		expect(open.read("problems.csv").rows).toContainEqual(
			expect.arrayContaining([
				"two-numbers",
				"lots.csv",
				"2",
				"quantity",
				"1.400",
				"1.400 or 1400",
			]),
		);
		const stock = async (numbers: string) => {
			const { status, read } = await run("--numbers", numbers);
			const { header, rows } = read("order.csv");
			const soap = rows.find(([item]) => item === "Liquid soap");
			return [status, soap?.[header.indexOf("usable")]];
		};
		expect(await stock("comma")).toEqual([0, "1400"]);
		expect(await stock("point")).toEqual([0, "1.4"]);
	});

	test("dates", async () => {
		write("births.csv", "date,births,note\n03/01/2027,9,\n");
		const open = await run();
		expect([open.status, open.stderr]).toEqual([
			1,
			expect.stringContaining("“03/01/2027” can be 2027-01-03 or 2027-03-01"),
		]);
		const first = async (dates: string) =>
			(await run("--dates", dates)).read("day-plan.csv").rows[0]?.[1];
		expect(await first("month-first")).toBe("9");
		expect(await first("day-first")).not.toBe("9");
	});

	test("the letters of a file that is not UTF-8", async () => {
		const rounds = Buffer.concat([
			Buffer.from("start,label\n07:00,"),
			Buffer.from([0xd3, 0xf2, 0xf0, 0xee]),
			Buffer.from("\n14:00,\n21:00,\n"),
		]);
		write("rounds.csv", rounds);
		const guessed = await run();
		expect(guessed.stderr).toContain("it was read as Windows-1252");
		const said = await run("--encoding", "windows-1251");
		expect(said.stderr).not.toContain("Windows-1252");
		expect(said.read("run-sheet.csv").rows.flat()).toContain("Утро");
	});

	test.each([
		["--numbers", "commas"],
		["--dates", "year-first"],
		["--encoding", "klingon"],
	])("an answer that there is not: %s %s", async (...options) => {
		const { status } = await terminal(planCommand, [unit, "--out", place, ...options]);
		expect(status).toBe(2);
	});
});

test.each(["records.xls", "records.numbers"])(
	"a folder with %s says that it was not read, and makes no plan",
	async (name) => {
		write(name, "");
		const { status, stderr } = await run();
		expect([status, stderr]).toEqual([
			1,
			expect.stringContaining(`${name} seems to be the sheet records.csv and was not read`),
		]);
	},
);
