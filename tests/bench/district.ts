import { spawnSync } from "node:child_process";
import {
	closeSync,
	mkdirSync,
	mkdtempSync,
	openSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
	writeSync,
} from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { birthsSheet } from "../../src/core/sheets/births.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { UNIT_COLUMN } from "../../src/io/readUnits.ts";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { inventedUnit } from "../district/inventedUnit.ts";
import { rowsOfScript } from "../district/otherEngine.ts";
import { longUnit } from "./longUnit.ts";
import { type Goal, type Measured, measure, report } from "./measure.ts";

/**
 * A district from files to its lists, by the command as a person starts it: zips of the
 * sample workbook, each a unit of its own, and sets of sheets with small units. Beside one
 * worker alone, papaparse alone reading the set's bytes, and the manual's script over the
 * lists, whose sum of needs must be ours. Memory is the largest resident size of the process
 * with all its workers.
 *
 *   npm run bench district              # small numbers
 *   DISTRICT=large npm run bench district
 */
const LARGE = process.env.DISTRICT === "large";
const ZIPS = LARGE ? 10_000 : 200;
const SETS = LARGE ? [1000, 10_000, 100_000] : [300, 3000];
/** A first day of the units' plans, so that no lot is of a day to come. */
const TODAY = "2027-03-01";
const MOST_GROWTH = 1.25;
/** The engine adds up cells of six decimals, the program what they stand for. */
const CELL_ERROR = 1e-6;
const cores = availableParallelism();
const place = mkdtempSync(join(tmpdir(), "district-"));
const rows: Measured[] = [];
const goals: Goal[] = [];
const sizes: { readonly units: number; readonly mb: number }[] = [];

/** Runs the command over a folder; what GNU time would say is asked of the process itself. */
function planned(what: string, folder: string, units: number, workers: number): number {
	const script = `
		import { unitsCommand } from ${JSON.stringify(join(import.meta.dirname, "../../src/cli/unitsCommand.ts"))};
		const status = await unitsCommand(${JSON.stringify([folder, "--out", join(place, "out"), "--workers", String(workers)])}, { log() {}, error() {} }, ${JSON.stringify(TODAY)});
		const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
		console.log(JSON.stringify({ status, cpuMs: (userCPUTime + systemCPUTime) / 1000, mb: maxRSS / 1000 }));`;
	const program = join(place, "program.mjs");
	writeFileSync(program, script);
	const began = performance.now();
	const { stdout, stderr } = spawnSync(process.execPath, [program], { encoding: "utf8" });
	const ms = performance.now() - began;
	const { status, cpuMs, mb } = JSON.parse(stdout || "{}") as {
		status?: number;
		cpuMs: number;
		mb: number;
	};
	if (status !== 0) throw new Error(stderr);
	const each = (units * 1000) / ms;
	rows.push({
		what: `${what}, ${workers} workers: ${each.toFixed(0)} units a second, ${(cpuMs / units).toFixed(1)} ms of a core each`,
		ms,
		quickestMs: ms,
		runs: 1,
		heapMb: mb,
	});
	return mb;
}

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
async function added(what: string): Promise<void> {
	const out = join(place, "out");
	const began = performance.now();
	const [, order = []] = await rowsOfScript(out);
	const ms = performance.now() - began;
	const own = readCsv("units-order.csv", readFileSync(join(out, "units-order.csv"), "utf8")).table;
	const needs = own.rows.map((cells) => Number(cells[own.header.indexOf("need")]));
	const sum = (all: readonly number[]) => all.reduce((some, each) => some + each, 0);
	const [found, wanted] = [sum(order.map(({ need }) => Number(need))), sum(needs)];
	if (!(Math.abs(found - wanted) <= wanted * CELL_ERROR))
		throw new Error(`${found}, not ${wanted}`);
	rows.push({ what: `${what}: the script of sums by DuckDB`, ms, quickestMs: ms, runs: 1 });
}

const parsed = (folder: string) =>
	readdirSync(folder).map(
		(name) =>
			Papa.parse<string[]>(readFileSync(join(folder, name), "utf8"), {
				delimiter: ",",
				newline: "\n",
			}).data.length,
	);

try {
	const zips = join(place, "zips");
	mkdirSync(zips);
	for (let seed = 0; seed < ZIPS; seed++)
		writeFileSync(join(zips, `u${seed}.zip`), zipTexts(inventedUnit(seed)));
	for (const workers of new Set([1, cores])) planned(`${ZIPS} zips`, zips, ZIPS, workers);
	for (const count of SETS) {
		const folder = join(place, `set-${count}`);
		writeSet(folder, count);
		rows.push(
			measure(`set of ${count}: papaparse alone`, () => parsed(folder), { warmUp: 0, least: 1 }),
		);
		// One worker beside all of them once, where it does not take long.
		for (const workers of count === SETS[0] ? new Set([1, cores]) : [cores])
			sizes.push({ units: count, mb: planned(`set of ${count}`, folder, count, workers) });
		await added(`set of ${count}`);
		rmSync(folder, { recursive: true });
	}
	const [few, many] = [sizes.at(-2), sizes.at(-1)];
	if (few && many)
		goals.push({
			what: `A district's memory: ${many.units} units ÷ ${few.units}`,
			found: many.mb / few.mb,
			unit: "times",
			bound: "at most",
			limit: MOST_GROWTH,
		});
	report("district", rows, goals);
} finally {
	rmSync(place, { recursive: true, force: true });
}
