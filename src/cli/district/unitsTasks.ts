import type { UnitsTask } from "./district.ts";
import { workbooksIn } from "./workbooksIn.ts";

/** Units a worker is given at a time: enough that handing over costs nothing beside planning. */
const UNITS_PER_TASK = 8;

/**
 * The units of a folder as tasks, in the order of their paths.
 *
 * @param skip the folder that is written to, which may lie within
 * @param count is told how many units there are, as soon as that is known
 */
export async function* unitsTasks(
	folder: string,
	skip: string,
	count: (all: number) => void,
): AsyncGenerator<UnitsTask> {
	let paths: string[] = [];
	let all = 0;
	for await (const _ of workbooksIn(folder, skip)) all++;
	count(all);
	for await (const path of workbooksIn(folder, skip)) {
		paths.push(path);
		if (paths.length < UNITS_PER_TASK) continue;
		yield { paths };
		paths = [];
	}
	if (paths.length > 0) yield { paths };
}
