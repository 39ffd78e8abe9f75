import type { ComputedRow } from "../../computedTable.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { kitRegisterSheet } from "../../sheets/kitRegister.ts";
import type { IsoDate } from "../../values/date.ts";
import { kitRegisterTable } from "../kits/kitRegisterTable.ts";
import { unitFigures } from "../unitFigures.ts";

/** How each kit stands on a day, by what is written down up to its end; the one to use next has place 1. */
export function kitsOn(
	read: ReadWorkbook,
	day: IsoDate,
): readonly ComputedRow<typeof kitRegisterSheet>[] {
	return kitRegisterTable(unitFigures(read, day, day)).rows;
}
