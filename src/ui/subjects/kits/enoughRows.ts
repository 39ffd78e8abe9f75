import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { kitCoverSheet } from "../../../core/sheets/kitCover.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** For each kind of kit, the row of the cover table that is the first to be enough. */
export function enoughRows(state: State): ComputedRow<typeof kitCoverSheet>[] {
	const enough = rowsOf(state.plan, kitCoverSheet).filter((row) => wordIn(row.enough) === "yes");
	return enough.filter((row, at) => at === 0 || wordIn(row.kind) !== wordIn(enough[at - 1]?.kind));
}
