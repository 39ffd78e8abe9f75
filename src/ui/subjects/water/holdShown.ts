import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** Minutes for which rinse water is kept at the boil, as the plan counts with them, typed or by the height above the sea; undefined where it has none. */
export function holdShown(state: State): number | undefined {
	const rinse = rowsOf(state.plan, boilingSheet).find(({ pieces }) => wordIn(pieces) === "");
	return numberIn(rinse?.hold_minutes);
}
