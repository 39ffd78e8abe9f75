import { failedUnit } from "../../core/units/unitsProblems.ts";
import { type UnitDone, unread } from "./unitDone.ts";

/** A unit on which this program itself failed: its row says so. */
export function failed(path: string, trouble: unknown): UnitDone {
	return unread({ unit: path, path }, [failedUnit(trouble)]);
}
