import { advice, type Problem } from "../problem.ts";
import { say } from "../say.ts";
import { unitSheet } from "../sheets/unit.ts";
import { unitNameIn } from "../sheets/unitNameIn.ts";
import type { Workbook } from "../workbook.ts";

/**
 * That two copies name two units: they may be of two wards, or of one that was renamed. A copy
 * without a name, such as a single sheet, may be of any.
 */
export function twoUnits(one: Workbook, other: Workbook): Problem | undefined {
	const [ours, theirs] = [unitNameIn(one), unitNameIn(other)];
	if (ours === "" || theirs === "" || ours === theirs) return undefined;
	return advice(
		{ file: unitSheet.file, line: null, column: "unit_name" },
		{
			code: "two-units",
			received: theirs,
			allowed: ours,
			message: say`The two copies name two units, “${ours}” and “${theirs}”. If they are two units, do not bring them together: their kits and their stock would be one.`,
		},
	);
}
