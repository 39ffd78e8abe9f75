import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { planCommand } from "../../src/cli/planCommand.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { terminal } from "./terminal.ts";

let place: string;
let unit: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "slips-"));
	unit = join(place, "unit");
	cpSync("sample-csv", unit, { recursive: true });
});
afterEach(() => rmSync(place, { recursive: true }));

async function run(today?: string) {
	const out = join(place, "out");
	const { status } = await terminal(planCommand, [unit, "--out", out], today);
	const read = (file: string) => {
		const { header, rows } = readCsv(file, readFileSync(join(out, file), "utf8")).table;
		return rows.map((cells) => Object.fromEntries(header.map((key, at) => [key, cells[at]])));
	};
	return { status, read };
}
type Read = Awaited<ReturnType<typeof run>>["read"];

/** The product in use, as somebody typed its label. */
const product = (form: string, strength: string, measure: string, confirmed: string) =>
	writeFileSync(
		join(unit, "chlorine.csv"),
		`product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use,label_confirmed\nLiquid bleach 3.5 %,${form},${strength},${measure},,1.3,2,yes,${confirmed}\n`,
	);
const asked = (read: Read) =>
	read("problems.csv").filter(({ code }) => code === "unusual-strength");
const measuredOut = (read: Read) =>
	["mixing.csv", "mixing-days.csv", "wall-table.csv"]
		.flatMap(read)
		.filter(({ product_quantity }) => product_quantity !== "");

// Slips of a person with a label in hand, each with a piece of what was probably meant.
const slips = [
	["35 g/L as %", "liquid", "35", "pct_w_v", "35 g/L would be 3.5 %"],
	["48 degrees as %", "liquid", "48", "pct_w_v", "for 48 degrees choose “chlorometric degree”"],
	["a share for 70 %", "powder", "0.7", "pct_w_w", "0.7 would be 70 %"],
	["1,670 mg as grams", "tablet", "1670", "g_per_tablet", "1670 mg would be 1.67 g"],
] as const;

test.each(slips)("%s stands in problems.csv, and nothing is measured out", async (...slip) => {
	const [, form, strength, measure, meant] = slip;
	product(form, strength, measure, "");
	const { status, read } = await run();
	expect(status).toBe(1);
	expect(asked(read)).toMatchObject([
		{ file: "chlorine.csv", line: "2", column: "strength", weight: "error" },
	]);
	expect(asked(read)[0]?.message).toContain(meant);
	expect(measuredOut(read)).toEqual([]);
});

test.each(slips)("%s, confirmed, is measured out", async (_what, form, strength, measure) => {
	product(form, strength, measure, "yes");
	const { read } = await run();
	expect(asked(read)).toEqual([]);
	expect(measuredOut(read)).not.toEqual([]);
});

// The ends of what is sold, by the notes on chlorine.
test.each([
	["liquid", "0.5", "pct_w_v"],
	["liquid", "16.5", "pct_w_v"],
	["powder", "35", "pct_w_w"],
	["powder", "65", "pct_w_w"],
	["powder", "70", "pct_w_w"],
	["tablet", "0.4", "g_per_tablet"],
	["tablet", "5", "g_per_tablet"],
])("a %s of %s %s raises nothing", async (form, strength, measure) => {
	product(form, strength, measure, "");
	expect(asked((await run()).read)).toEqual([]);
});

// The plan of the demo begins on 2027-03-01; its record ends on 2027-02-28.
test.each([
	["in the future", "2028-02-22", "2027-02-28", "made-after-today"],
	["in the future, and no clock is asked", "2028-02-22", undefined, "made-in-future"],
	["tomorrow, on the plan's first day", "2027-03-01", "2027-02-28", "made-after-today"],
	["tomorrow, by a clock behind the record", "2027-03-01", "2010-01-01", undefined],
	["on the plan's first day, and no clock is asked", "2027-03-01", undefined, undefined],
])("a lot made %s", async (_words, made, today, code) => {
	writeFileSync(
		join(unit, "lots.csv"),
		`item,lot,quantity,made_on\nLiquid bleach 3.5 %,B-1,9000,${made}\n`,
	);
	const { status, read } = await run(today);
	const found = read("problems.csv").filter((problem) => problem.code?.startsWith("made-"));
	expect(found.map((problem) => problem.code)).toEqual(code ? [code] : []);
	expect(status).toBe(code ? 1 : 0);
	const ofLot = measuredOut(read).filter(({ lot }) => lot === "B-1");
	if (code) expect(ofLot).toEqual([]);
	else expect(ofLot).not.toEqual([]);
});
