import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { counted } from "../../format/counted.ts";
import { onceIn, oneNeedIn } from "../../format/onceIn.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { usesPerYear } from "./usesPerYear.ts";

/** What the kits in service mean, for each kind: "With 4 kits about one need in 15,000 finds none ready: …". */
export function coverWords(state: State): string[] {
	const rows = rowsOf(state.plan, leversSheet);
	const now = rows.filter((row, at) => wordIn(row.kind) !== wordIn(rows[at - 1]?.kind) || at === 0);
	const words = now.flatMap((row) => wordsOf(state, row));
	return words.length === 0 ? [] : [...words, underWhat()];
}

/** A number of years is believed beyond what it stands on, unless that is said beside it. */
function underWhat(): string {
	return say`This holds while every round begins on time and takes no longer than planned, kits are renewed as set, and none of them fails or is lost.`;
}

function wordsOf(state: State, row: ComputedRow<typeof leversSheet>): string[] {
	const kits = numberIn(row.kits);
	const unmet = numberIn(row.unmet_per_1000_uses);
	const kind = wordIn(row.kind);
	const yearly = usesPerYear(state, kind);
	if (kits === undefined || unmet === undefined || yearly === undefined) return [];
	if (kits === 0)
		return kind === ""
			? [say`No kit is in service: none is ever ready.`]
			: [say`No kit (${kind}) is in service: none is ever ready.`];
	const owned = counted(kits, "kit");
	const [need, often] = [oneNeedIn(unmet), onceIn(unmet, yearly)];
	return kind === ""
		? [say`With ${owned} in service ${need}, ${often}.`]
		: [say`With ${owned} in service (${kind}) ${need}, ${often}.`];
}
