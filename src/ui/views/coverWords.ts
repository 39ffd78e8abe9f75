import type { ComputedRow } from "../../core/computedTable.ts";
import { say } from "../../core/say.ts";
import { leversSheet } from "../../core/sheets/levers.ts";
import type { State } from "../book/store.ts";
import { onceIn, oneNeedIn } from "../shown/howOften.ts";
import { numberIn, wordIn } from "./planRows.ts";
import { usesPerYear } from "./usesPerYear.ts";

/** What the kits in service mean, for each kind: "With 4 kits about one need in 15,000 finds none ready: …". */
export function coverWords(state: State): string[] {
	const rows = state.plan.tables[leversSheet.file]?.rows ?? [];
	const now = rows.filter(
		(row, at) => wordIn(row, "kind") !== wordIn(rows[at - 1], "kind") || at === 0,
	);
	return now.flatMap((row) => wordsOf(state, row));
}

function wordsOf(state: State, row: ComputedRow): string[] {
	const kits = numberIn(row, "kits");
	const unmet = numberIn(row, "unmet_per_1000_uses");
	const kind = wordIn(row, "kind");
	const yearly = usesPerYear(state, kind);
	if (kits === undefined || unmet === undefined || yearly === undefined) return [];
	const of = kind === "" ? "" : ` (${kind})`;
	if (kits === 0) return [say`No kit${of} is in service: no need finds one ready.`];
	const owned = kits === 1 ? say`1 kit` : say`${kits} kits`;
	return [say`With ${owned} in service${of} ${oneNeedIn(unmet)}, ${onceIn(unmet, yearly)}.`];
}
