import { join } from "node:path";
import Tinypool from "tinypool";
import { itemNames } from "../../core/units/itemNames.ts";
import { unitsOfPile } from "../../io/district/unitPiles.ts";
import type { ReadFiles } from "../../io/readFiles.ts";
import { readFolder } from "../../io/readFolder.ts";
import type { District, UnitsTask } from "./district.ts";
import { failed } from "./failed.ts";
import { type UnitDone, unitDone } from "./unitDone.ts";

/** Plans some units, in a worker; one that fails takes no other with it. */
export default async function planUnits(task: UnitsTask): Promise<UnitDone[]> {
	const { folder, names, answers, today } = Tinypool.workerData as District;
	const nameOf = itemNames(names);
	const done: UnitDone[] = [];
	const take = async (path: string, read: () => Promise<ReadFiles>) => {
		try {
			done.push(unitDone(path, await read(), nameOf, today));
		} catch (trouble) {
			done.push(failed(path, trouble));
		}
	};
	if (task.pile) {
		const { path, headers } = task.pile;
		for (const { name, workbook } of await unitsOfPile({ path, units: task.paths }, headers))
			await take(name, async () => ({ workbook, problems: [], questions: [] }));
	} else
		for (const path of task.paths) await take(path, () => readFolder(join(folder, path), answers));
	return done;
}
