import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { numberIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** Minutes at the boil that the plan counts with, typed or by the height above the sea; undefined where it has none. */
export function holdShown(state: State): number | undefined {
	return numberIn(rowsOf(state.plan, boilingSheet)[0]?.hold_minutes);
}
