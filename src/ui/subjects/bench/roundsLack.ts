import type { RoundsDoneRow } from "../../../core/sheets/roundsDone.ts";
import type { State } from "../../state/store.ts";
import { waysOf } from "../../state/waysOf.ts";

/** What this unit's rounds do not have: it is neither asked nor left to be written, and stays blank. */
export function roundsLack(state: State): readonly (keyof RoundsDoneRow)[] {
	const { treated, isMixed } = waysOf(state);
	const soaks = treated.size === 0 || treated.has("chlorine");
	return [
		...(soaks ? [] : (["soak_in", "soak_out"] as const)),
		...(isMixed ? [] : (["product", "lot", "litres", "strength_reading_pct"] as const)),
	];
}
