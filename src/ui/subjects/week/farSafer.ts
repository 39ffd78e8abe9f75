import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { howSafeSheet } from "../../../core/sheets/howSafe.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

type Row = ComputedRow<typeof howSafeSheet>;

/** One number that is far safer than asked, on some days alike or for the whole plan. */
export interface FarSafer {
	/** The row of the day on which most of it is beyond what is expected. */
	readonly row: Row;
	/** Days on which it is so, of all that have the number; none for the whole plan. */
	readonly days: number;
	readonly ofDays: number;
}

/** What costs work, water or money; what only follows from these is left to the sheet. */
const SHOWN = new Set([
	"kits_needed",
	"kits_to_reprocess",
	"chlorine",
	"boiled_litres",
	"boiled_for_rounds",
	"vinegar_litres",
	"gauze_pieces",
	"order",
]);

/** Numbers of the plan that are far safer than asked, the one of which the largest part is beyond what is expected first. */
export function farSafer(state: State): FarSafer[] {
	const groups = new Map<string, Row[]>();
	const rows = rowsOf(state.plan, howSafeSheet);
	// Where every round's water is boiled, what its rounds may take is the smaller matter.
	const byRule = rows.some((row) => wordIn(row.promise) === "boiled_for_rounds");
	for (const row of rows) {
		const promise = wordIn(row.promise);
		if (!SHOWN.has(promise) || (byRule && promise === "boiled_litres")) continue;
		const key = JSON.stringify([promise, wordIn(row.of), wordIn(row.day) !== ""]);
		groups.set(key, [...(groups.get(key) ?? []), row]);
	}
	return [...groups.values()].flatMap(worstOf).sort((a, b) => unused(b.row) - unused(a.row));
}

function worstOf(rows: readonly Row[]): FarSafer[] {
	const far = rows.filter((row) => wordIn(row.far_safer) === "yes");
	const [worst] = [...far].sort((a, b) => unused(b) - unused(a));
	if (!worst) return [];
	const isDay = wordIn(worst.day) !== "";
	return [{ row: worst, days: isDay ? far.length : 0, ofDays: isDay ? rows.length : 0 }];
}

/** The part of what is set aside that is beyond what is expected; kits come last. */
function unused({ beyond, set_aside }: Row): number {
	const all = numberIn(set_aside) ?? 0;
	return all > 0 ? (numberIn(beyond) ?? 0) / all : 0;
}
