import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import type { SheetPage } from "../../page.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { kitRegisterView } from "./kitRegisterView.ts";
import { readinessCautions } from "./readinessCautions.ts";

/** Each kit: how it stands, and which to use next. */
export const kitRegisterPage: SheetPage = {
	sheet: kitRegisterSheet,
	headline: registerHeadline,
	over: kitRegisterView,
	cautions: readinessCautions,
};

function registerHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, kitRegisterSheet);
	if (rows.length === 0) return undefined;
	const counts = countWords(rows.filter((row) => wordIn(row.counts) === "yes").length, rows.length);
	const next = nextOfKinds(rows);
	if (next === "" && rows.some((row) => !row.state.outcome.ok))
		return say`Which kits are ready is not known; ${counts}`;
	return next === "" ? say`No kit is ready; ${counts}` : say`Use ${next} next; ${counts}`;
}

/** How many of the kits count in the plan. */
export function countWords(serving: number, all: number): string {
	if (all === 1) return serving === 1 ? say`the one kit counts` : say`the one kit does not count`;
	if (serving === all) return say`all ${all} kits count`;
	return serving === 1 ? say`1 of ${all} kits counts` : say`${serving} of ${all} kits count`;
}

/** The first ready kit of each kind; the kind is named where there are several. */
function nextOfKinds(rows: readonly ComputedRow<typeof kitRegisterSheet>[]): string {
	const ready = rows
		.filter((row) => numberIn(row.use_next) !== undefined)
		.sort((a, b) => (numberIn(a.use_next) as number) - (numberIn(b.use_next) as number));
	const kinds = new Set(rows.map((row) => wordIn(row.kind)));
	const firsts = [...kinds].flatMap((kind) => {
		const first = ready.find((row) => wordIn(row.kind) === kind);
		if (!first) return [];
		return [kinds.size === 1 ? wordIn(first.kit) : `${wordIn(first.kit)} (${kind})`];
	});
	return firsts.length === 0 ? "" : firsts.reduce((one, other) => say`${one} or ${other}`);
}
