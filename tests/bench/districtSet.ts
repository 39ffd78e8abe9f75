import {
	closeSync,
	mkdirSync,
	mkdtempSync,
	openSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeSync,
} from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { birthsSheet } from "../../src/core/sheets/births.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { UNIT_COLUMN } from "../../src/io/readUnits.ts";
import { rowsOfScript } from "../district/otherEngine.ts";
import { longUnit } from "./longUnit.ts";
import { type Measured, measure, report } from "./measure.ts";
import { plannedDistrict } from "./plannedDistrict.ts";

/**
 * Sheets of many small units from files to lists, by the command as a person starts it.
 * Beside one worker alone, papaparse alone reading the bytes, and the manual's script over
 * the lists, whose sum of needs must be ours.
 *
 *   npm run bench districtSet
 *   DISTRICT=large npm run bench districtSet      # 10,000 and 100,000 units, a quarter of an hour
 */
const [FEW, MANY] = process.env.DISTRICT === "large" ? [10_000, 100_000] : [300, 3000];
const MOST_GROWTH = 1.25;
/** The engine adds up cells of six decimals, the program what they stand for. */
const CELL_ERROR = 1e-6;
const place = mkdtempSync(join(tmpdir(), "district-"));
const out = join(place, "out");

/** So many units have births of their own before one has those of another. */
const DIFFERENT = 5000;
/** A point with three digits behind it may mean thousands: such a set is read as a whole. */
const CLEAR_DECIMALS = 4;

/** A set of small units that differ in their births, written unit by unit. */
function writeSet(folder: string, count: number): void {
	mkdirSync(folder);
	const written = (name: string, cells: readonly string[], unit: number) =>
		name === birthsSheet.file
			? cells.with(1, (Number(cells[1]) + (unit % DIFFERENT) / 1000).toFixed(CLEAR_DECIMALS))
			: cells;
	for (const [name, { header, rows: own }] of Object.entries(longUnit(7).tables)) {
		const file = openSync(join(folder, name), "w");
		writeSync(file, `${[UNIT_COLUMN, ...header].join(",")}\n`);
		for (let unit = 0; unit < count; unit++)
			writeSync(
				file,
				own.map((cells) => `Unit ${unit},${written(name, cells, unit).join(",")}\n`).join(""),
			);
		closeSync(file);
	}
}

/** The other engine's sums over the lists that were just written. @throws where its order is not ours */
async function added(what: string): Promise<Measured> {
	const began = performance.now();
	const [, order = []] = await rowsOfScript(out);
	const ms = performance.now() - began;
	const own = readCsv("units-order.csv", readFileSync(join(out, "units-order.csv"), "utf8")).table;
	const needs = own.rows.map((cells) => Number(cells[own.header.indexOf("need")]));
	const sum = (all: readonly number[]) => all.reduce((some, each) => some + each, 0);
	const [found, wanted] = [sum(order.map(({ need }) => Number(need))), sum(needs)];
	if (!(Math.abs(found - wanted) <= wanted * CELL_ERROR))
		throw new Error(`${found}, not ${wanted}`);
	return { what: `${what}: the script of sums by DuckDB`, ms, quickestMs: ms, runs: 1 };
}

const parsed = (folder: string) =>
	readdirSync(folder).map(
		(name) =>
			Papa.parse<string[]>(readFileSync(join(folder, name), "utf8"), {
				delimiter: ",",
				newline: "\n",
			}).data.length,
	);

async function measuredSet(units: number, workers: Iterable<number>) {
	const [what, folder] = [`set of ${units}`, join(place, `set-${units}`)];
	writeSet(folder, units);
	const alone = measure(`${what}: papaparse alone`, () => parsed(folder), { warmUp: 0, least: 1 });
	const planned = [...workers].map((count) =>
		plannedDistrict({ what, folder, units, workers: count, out }),
	);
	rmSync(folder, { recursive: true });
	return { rows: [alone, ...planned, await added(what)], mb: planned.at(-1)?.heapMb ?? 0 };
}

try {
	const cores = availableParallelism();
	const few = await measuredSet(FEW, new Set([1, cores]));
	const many = await measuredSet(MANY, [cores]);
	const goal = {
		what: `A district's memory: ${MANY} units ÷ ${FEW}`,
		found: many.mb / few.mb,
		unit: "times",
		bound: "at most",
		limit: MOST_GROWTH,
	} as const;
	report("districtSet", [...few.rows, ...many.rows], [goal]);
} finally {
	rmSync(place, { recursive: true, force: true });
}
