import { join } from "node:path";
import Tinypool from "tinypool";
import { itemNames } from "../../core/units/itemNames.ts";
import { readFolder } from "../../io/readFolder.ts";
import type { District, UnitsTask } from "./district.ts";
import { failed } from "./failed.ts";
import { type UnitDone, unitDone } from "./unitDone.ts";

/** Plans some units, in a worker; one that fails takes no other with it. */
export default async function planUnits({ paths }: UnitsTask): Promise<UnitDone[]> {
	const { folder, names, answers, today } = Tinypool.workerData as District;
	const nameOf = itemNames(names);
	const done: UnitDone[] = [];
	for (const path of paths)
		try {
			done.push(unitDone(path, await readFolder(join(folder, path), answers), nameOf, today));
		} catch (trouble) {
			done.push(failed(path, trouble));
		}
	return done;
}
