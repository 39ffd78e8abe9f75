import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { unitsCommand } from "../../src/cli/unitsCommand.ts";
import { pileUnits } from "../../src/io/district/pileUnits.ts";
import { recordsEnd } from "../../src/io/district/recordsEnd.ts";
import { UnitPiles, unitsOfPile } from "../../src/io/district/unitPiles.ts";
import { readUnits, UNIT_COLUMN } from "../../src/io/readUnits.ts";
import { unitWith } from "../core/smallUnit.ts";
import { terminal } from "../io/terminal.ts";

let place: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "set-"));
	mkdirSync(join(place, "set"));
});
afterEach(() => rmSync(place, { recursive: true }));

test.each([
	["a,b\nc,d", 4],
	["a,b", 0],
	["", 0],
	['a,"b\nc"\nd,"e\n', 8],
	['a,"b ""c""\n"\nd\n', 15],
	['5" tube,"x\ny"\n"', 14],
])("%j ends its last whole record at %i", (text, end) => {
	expect(recordsEnd(text)).toBe(end);
});

/** Writes files of a set and gives their paths. */
function set(files: Record<string, string | Uint8Array>): string[] {
	return Object.entries(files).map(([name, contents]) => {
		writeFileSync(join(place, "set", name), contents);
		return join(place, "set", name);
	});
}

/** What comes back from the piles, and what reading the whole set at once gives. */
async function both(files: Record<string, string | Uint8Array>, enough: number) {
	const piles = new UnitPiles(join(place, "piles"));
	const { headers, problems } = await pileUnits(set(files), piles, {}, enough);
	const units = [];
	for await (const pile of piles.piles()) units.push(...(await unitsOfPile(pile, headers)));
	const bytes = Object.entries(files).map(([name, contents]) => ({
		name,
		bytes: typeof contents === "string" ? new TextEncoder().encode(contents) : contents,
	}));
	return { piled: { units, problems }, whole: readUnits(bytes) };
}

const MANY = 100;
const rows = (header: string, row: (unit: number, day: number) => string) =>
	[
		header,
		...Array.from({ length: 3 * MANY }, (_, i) => row(i % MANY, 1 + Math.floor(i / MANY))),
	].join("\n");
const births = rows(
	`${UNIT_COLUMN},date,births,note`,
	(unit, day) => `U${unit},2027-03-0${day},${unit % 9},"a ""b""\nc, é"`,
);
const kits = rows(
	`${UNIT_COLUMN},kit,kind,status,ready_since,note`,
	(unit, day) => ` U${MANY - unit} ,K${day},,in_service,,`,
);

describe("a set that goes piece by piece is read as it is at once", () => {
	test.each([1, 100, 5000, 1e6])("in pieces of %i characters", async (enough) => {
		const { piled, whole } = await both({ "births.csv": births, "kits.csv": kits }, enough);
		expect(whole.units).toHaveLength(MANY + 1);
		expect(piled).toEqual({ units: whole.units, problems: whole.problems });
	});

	test.each([
		["another separator", births.replaceAll(",", ";")],
		["a decimal comma", births.replaceAll(/,(\d),"/g, ',"$1,5","')],
		["another encoding", new Uint8Array(Buffer.from(births, "latin1"))],
		["UTF-16", new Uint8Array(Buffer.from(`\ufeff${births}`, "utf16le"))],
		["a mark and other line ends", `\ufeff${births.replaceAll("\n", "\r\n")}`],
		["lines ended by CR alone", births.replaceAll("\n", "\r")],
		[
			"a header ended by CR, rows by LF",
			`${UNIT_COLUMN},date,births,note\r${"U1,2027-03-01,1,\n".repeat(40)}U2,2027-03-01,2,`,
		],
		["a quote that is never closed", `${births}\nU1,2027-03-09,1,"open`],
		["a row without a unit", `${births}\n,2027-03-09,1,`],
		["no column of units", births.replace(UNIT_COLUMN, "name")],
		["a header alone", `${UNIT_COLUMN},date,births,note`],
		["nothing", ""],
	])("%s", async (_, text) => {
		const { piled, whole } = await both({ "births.csv": text, "kits.csv": kits }, 300);
		expect(piled.problems).toEqual(whole.problems);
		expect(piled.units).toEqual(whole.units);
	});

	test("a file that is none of a workbook is named, and one given twice asked about", async () => {
		const { piled, whole } = await both({ "births.csv": births, "notes.txt": "hello" }, 300);
		expect(piled.problems).toEqual(whole.problems);
		const twice = await both({ "births.csv": births, "births (1).csv": births }, 300);
		expect(twice.piled.problems).toEqual(twice.whole.problems);
		expect(twice.piled.problems.some(({ weight }) => weight === "error")).toBe(true);
	});
});

describe("planned from the command line", () => {
	const setOf = (count: number) => {
		const { tables } = unitWith({});
		return Object.fromEntries(
			Object.entries(tables).map(([file, { header, rows: own }]) => [
				file,
				[
					[UNIT_COLUMN, ...header].join(","),
					...Array.from({ length: count }, (_, unit) =>
						own.map((cells) => [`U${unit}`, ...cells].join(",")),
					).flat(),
				].join("\n"),
			]),
		);
	};
	const run = () =>
		terminal(unitsCommand, [join(place, "set"), "--out", join(place, "out"), "--workers", "1"]);

	test("each unit of the set has its row, and nothing is left of the piles", async () => {
		set(setOf(40));
		const { status, stdout } = await run();
		expect({ status, stdout }).toEqual({
			status: 0,
			stdout: expect.stringContaining("40 of 40 units planned"),
		});
		const lines = readFileSync(join(place, "out/units.csv"), "utf8").trim().split("\r\n").slice(1);
		expect(lines.map((line) => line.split(",")[1])).toEqual(
			Array.from({ length: 40 }, (_, unit) => `U${unit}`),
		);
		expect(new Set(lines.map((line) => line.split(",").slice(2).join())).size).toBe(1);
	});

	test("1 and nothing written where a whole file of the set is not understood", async () => {
		set({ ...setOf(2), "lots.csv": "item,lot\ngauze,L1\n" });
		const { status, stderr } = await run();
		expect({ status, stderr }).toEqual({ status: 1, stderr: expect.stringContaining("lots.csv") });
		expect(existsSync(join(place, "out/units.csv"))).toBe(false);
	});
});
