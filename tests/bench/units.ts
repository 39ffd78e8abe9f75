import Papa from "papaparse";
import { plan } from "../../src/core/plan/plan.ts";
import { readUnits, UNIT_COLUMN } from "../../src/io/readUnits.ts";
import { longUnit } from "./longUnit.ts";
import {
	against,
	type Goal,
	heapMb,
	type Measured,
	measure,
	measureInTurn,
	report,
} from "./measure.ts";

/**
 * The workbooks of many units out of one set of CSV files (a row of each file names its
 * unit first), and a week's plan for each; beside papaparse reading the same bytes, told
 * separator and line end, in the same run. Heap is what the workbooks hold once read,
 * or, for planning, what all plans of the smallest set hold.
 */
const UNITS = [100, 1000, 10_000];
const MOST_TIMES_PARSER = 3;
const MOST_GROWTH = 1.5;
const FEW = { warmUp: 1, least: 3 };
const workbook = longUnit(7);
const rows: Measured[] = [];
const goals: Goal[] = [];

for (const count of UNITS) {
	const files = setOf(count);
	const megabytes = files.reduce((sum, { bytes }) => sum + bytes.length, 0) / 1e6;
	const name = `${count} units, ${megabytes.toFixed(1)} MB`;
	const runs = count > 1000 ? FEW : undefined;
	const before = heapMb();
	const { units, problems } = readUnits(files);
	const held = heapMb() - before;
	if (problems.length > 0 || units.length !== count) throw new Error("the set was not read");
	const [parser, read] = measureInTurn(
		[`${name}: papaparse alone`, () => files.map(parsed)],
		[`${name}: read`, () => readUnits(files)],
		runs,
	);
	const planned = measure(`${name}: plan each`, () => units.map(planOf), FEW);
	const both = measure(`${name}: read and plan`, () => readUnits(files).units.map(planOf), FEW);
	rows.push(parser, { ...read, heapMb: held }, against(parser, planned), against(parser, both));
	goals.push({
		what: `${name}: reading ÷ papaparse alone`,
		found: read.timesPeer ?? Number.NaN,
		unit: "times",
		bound: "at most",
		limit: MOST_TIMES_PARSER,
	});
}
for (const what of ["read", "plan each"]) goals.push(growth(what));
report("units", rows, goals);
console.log(`  largest resident size ${Math.round(process.resourceUsage().maxRSS / 1000)} MB`);

/** How much more a unit of the largest set costs than one of the smallest. */
function growth(what: string): Goal {
	const perUnit = rows
		.filter((row) => row.what.endsWith(`: ${what}`))
		.map(({ ms }, i) => ms / (UNITS[i] as number));
	return {
		what: `Units, ${what}: one of ${UNITS.at(-1)} ÷ one of ${UNITS[0]}`,
		found: (perUnit.at(-1) as number) / (perUnit[0] as number),
		unit: "times",
		bound: "at most",
		limit: MOST_GROWTH,
	};
}

/** Only a number of the plan is kept, as a list of many units would. */
function planOf(unit: { readonly workbook: typeof workbook }): number {
	return plan(unit.workbook).problems.length;
}

function parsed({ bytes }: { readonly bytes: Uint8Array }): number {
	const text = new TextDecoder().decode(bytes);
	return Papa.parse<string[]>(text, { delimiter: ",", newline: "\n" }).data.length;
}

/** The small unit so many times over, each with its name in front of its rows. */
function setOf(count: number) {
	return Object.entries(workbook.tables).map(([name, { header, rows: own }]) => {
		const lines = [`${UNIT_COLUMN},${header.join(",")}`];
		for (let unit = 0; unit < count; unit++)
			for (const cells of own) lines.push(`Unit ${unit},${cells.join(",")}`);
		return { name, bytes: new TextEncoder().encode(`${lines.join("\n")}\n`) };
	});
}
