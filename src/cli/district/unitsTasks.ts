import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { districtTypedSheets } from "../../core/sheets/districtSheets.ts";
import type { Headers, Pile, UnitPiles } from "../../io/district/unitPiles.ts";
import type { UnitsTask } from "./district.ts";
import { workbooksIn } from "./workbooksIn.ts";

/** Units a worker is given at a time: enough that handing over costs nothing beside planning. */
const UNITS_PER_TASK = 8;

const OF_DISTRICT: readonly string[] = Object.values(districtTypedSheets).map(({ file }) => file);

/** Sheets that lie in the district's folder itself: each holds the rows of many units. */
export async function setFilesIn(folder: string): Promise<string[]> {
	const names = await readdir(folder);
	return names
		.filter((name) => /\.(csv|tsv|txt)$/i.test(name) && !OF_DISTRICT.includes(name.toLowerCase()))
		.sort()
		.map((name) => join(folder, name));
}

interface Set {
	readonly piles: UnitPiles;
	readonly headers: Headers;
}

/**
 * The units of a district as tasks: those of its set of sheets, in the order of their names
 * there, then its workbooks, in the order of their paths.
 *
 * @param skip the folder that is written to, which may lie within
 * @param count is told how many units there are, as soon as that is known
 */
export async function* unitsTasks(
	folder: string,
	{ piles, headers }: Set,
	skip: string,
	count: (all: number) => void,
): AsyncGenerator<UnitsTask> {
	let all = piles.units;
	for await (const _ of workbooksIn(folder, skip)) all++;
	count(all);
	for await (const pile of piles.piles()) yield ofPile(pile, headers);
	let paths: string[] = [];
	for await (const path of workbooksIn(folder, skip)) {
		paths.push(path);
		if (paths.length < UNITS_PER_TASK) continue;
		yield { paths };
		paths = [];
	}
	if (paths.length > 0) yield { paths };
}

function ofPile({ path, units }: Pile, headers: Headers): UnitsTask {
	return { paths: units, pile: { path, headers } };
}
