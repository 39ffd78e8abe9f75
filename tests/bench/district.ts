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
import { UNIT_COLUMN } from "../../src/io/readUnits.ts";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { inventedUnit } from "../district/inventedUnit.ts";
import { longUnit } from "./longUnit.ts";
import { type Goal, type Measured, measure, report } from "./measure.ts";

/**
 * A district from files to its lists, by the command as a person starts it: zips of the
 * sample workbook, each a unit of its own, and sets of sheets with small units. Beside one
 * worker alone, and papaparse alone reading the set's bytes. Memory is the largest resident
 * size of the process with all its workers.
 *
 *   npm run bench district              # small numbers
 *   DISTRICT=large npm run bench district
 */
const LARGE = process.env.DISTRICT === "large";
const ZIPS = LARGE ? 10_000 : 200;
const SETS = LARGE ? [1000, 10_000, 100_000] : [300, 3000];
const MOST_GROWTH = 1.25;
const cores = availableParallelism();
const place = mkdtempSync(join(tmpdir(), "district-"));
const rows: Measured[] = [];
const goals: Goal[] = [];
const sizes: { readonly units: number; readonly mb: number }[] = [];

/** Runs the command over a folder; what GNU time would say is asked of the process itself. */
function planned(what: string, folder: string, units: number, workers: number): number {
	const script = `
		import { unitsCommand } from ${JSON.stringify(join(import.meta.dirname, "../../src/cli/unitsCommand.ts"))};
		const status = await unitsCommand(${JSON.stringify([folder, "--out", join(place, "out"), "--workers", String(workers)])}, { log() {}, error() {} });
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

/** A set of small units, written unit by unit; its bytes in MB. */
function writeSet(folder: string, count: number): void {
	mkdirSync(folder);
	for (const [name, { header, rows: own }] of Object.entries(longUnit(7).tables)) {
		const file = openSync(join(folder, name), "w");
		writeSync(file, `${[UNIT_COLUMN, ...header].join(",")}\n`);
		for (let unit = 0; unit < count; unit++)
			writeSync(file, own.map((cells) => `Unit ${unit},${cells.join(",")}\n`).join(""));
		closeSync(file);
	}
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
