import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { inventedUnit } from "../district/inventedUnit.ts";
import { report } from "./measure.ts";
import { plannedDistrict } from "./plannedDistrict.ts";

/**
 * A district from files to its lists, by the command as a person starts it: zips of the
 * sample workbook, each a unit of its own, by all cores beside one worker alone.
 *
 *   npm run bench district
 *   DISTRICT=large npm run bench district      # 10,000 units, a quarter of an hour
 */
const UNITS = process.env.DISTRICT === "large" ? 10_000 : 200;
const place = mkdtempSync(join(tmpdir(), "district-"));

try {
	const folder = join(place, "zips");
	mkdirSync(folder);
	for (let seed = 0; seed < UNITS; seed++)
		writeFileSync(join(folder, `u${seed}.zip`), zipTexts(inventedUnit(seed)));
	const rows = [...new Set([1, availableParallelism()])].map((workers) =>
		plannedDistrict({
			what: `${UNITS} zips`,
			folder,
			units: UNITS,
			workers,
			out: join(place, "out"),
		}),
	);
	report("district", rows, []);
} finally {
	rmSync(place, { recursive: true, force: true });
}
