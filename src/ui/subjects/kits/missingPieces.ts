import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { counted } from "../../format/counted.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { State } from "../../state/store.ts";
import type { ToDo } from "../store/toDo.ts";

/** Kits whose latest check counted too few pieces: what is missing is to be found or ordered. */
export function missingPieces(state: State): ToDo[] {
	return rowsOf(state.plan, kitRegisterSheet).flatMap((row) => {
		const missing = numberIn(row.missing) ?? 0;
		if (missing === 0) return [];
		const checked = sentenceIn(row.last_checked);
		return [
			{
				item: say`${wordIn(row.kind)}, kit ${wordIn(row.kit)}`,
				amount: say`${counted(missing, "piece")} missing`,
				by: say`today`,
				more: say`Counted at the check of ${checked}. The kit does not count until it has gone through a later round and the check after that round has passed.`,
			},
		];
	});
}
