import type { ComputedRow } from "../../../core/computedTable.ts";
import { valueIn } from "../../../core/outcome.ts";
import { isSentAway, isSterile } from "../../../core/plan/methods/readyLifeDaysOf.ts";
import { treatedKits } from "../../../core/plan/methods/treatedKits.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { mixingSheet } from "../../../core/sheets/mixing.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { wordIn } from "../../state/numberIn.ts";
import { reprocessesAfterEachUse } from "../../state/reprocessesAfterEachUse.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { State } from "../../state/store.ts";
import { printedSetting, unitSetting } from "../../state/unitSetting.ts";
import { nameOfProductInUse } from "../mixing/mix.ts";
import { storeOf } from "../mixing/strengthView.ts";
import { type KitLabel, kitLabel } from "./kitLabel.ts";
import { rinseLabel } from "./rinseLabel.ts";
import { type SetApart, setApartLabel } from "./setApartLabel.ts";
import { type MadeFor, solutionLabel } from "./solutionLabel.ts";

/** What the person asked for. */
export interface WantedLabels {
	readonly solutions: number;
	/** Which of the mixing rows of the product in use. */
	readonly mix: number;
	readonly made: LocalTime | undefined;
	/** Sets of rinse buckets. */
	readonly rinseSets: number;
	/** Labels of each kit. */
	readonly perKit: number;
	readonly done: IsoDate | undefined;
}

/** Rows of the mixing sheet for the product in use: one for each lot. */
export function mixesInUse(state: State): readonly ComputedRow<typeof mixingSheet>[] {
	const inUse = nameOfProductInUse(state);
	return rowsOf(state.plan, mixingSheet).filter(
		(row) => inUse !== "" && wordIn(row.product) === inUse,
	);
}

/** The row asked for as it is on the day it is made; undefined where the lot cannot be used that day. */
function mixAsMade(
	state: State,
	{ mix, made }: WantedLabels,
): ReturnType<typeof mixesInUse>[0] | undefined {
	const chosen = mixesInUse(state)[mix];
	const store = storeOf(state);
	if (!chosen || !made || !store || made.date === store.lots.firstDay) return chosen;
	const [product, lot] = [wordIn(chosen.product), wordIn(chosen.lot)];
	return store.lots
		.mixingOn(made.date)
		.find((row) => wordIn(row.product) === product && wordIn(row.lot) === lot);
}

/** Kits that get a label: those not out of service. */
export function kitsToLabel(state: State): readonly ComputedRow<typeof kitRegisterSheet>[] {
	return rowsOf(state.plan, kitRegisterSheet).filter(
		(row) => wordIn(row.state) !== "out_of_service",
	);
}

/** Labels of one set of rinse buckets: one for each; one to be filled in where their number cannot be read. */
export function labelsOfASet(state: State): number {
	return unitSetting(state, "rinse_buckets") ?? 1;
}

/** Every label wanted, in the order in which it is used: solution, rinse, kits. */
export function wantedLabels(state: State, wanted: WantedLabels): HTMLElement[] {
	const unit = unitSetting(state, "unit_name") ?? "";
	const buckets = printedSetting(state, "rinse_buckets");
	const belowC = printedSetting(state, "rinse_below_c");
	const keepsHours = printedSetting(state, "boiled_water_hours");
	const solution = () =>
		solutionLabel({
			unit,
			targetPct: printedSetting(state, "target_strength_pct"),
			lifeHours: printedSetting(state, "solution_life_hours"),
			madeFor: madeFor(state),
			mix: mixAsMade(state, wanted),
			water: printedSetting(state, "solution_water"),
			made: wanted.made,
		});
	const rinse = () =>
		Array.from({ length: labelsOfASet(state) }, (_, i) =>
			rinseLabel(unit, buckets.value && i + 1, buckets, belowC, keepsHours),
		);
	const kits = () =>
		kitsToLabel(state).map((row) => labelOfKit(state, row, { unit, done: wanted.done }));
	return [
		...times(wanted.solutions, () => [solution()]),
		...times(wanted.rinseSets, rinse),
		...times(wanted.perKit, kits),
	];
}

/** Solution that is made for a round is poured away after it, whatever hours it could still be used. */
function madeFor(state: State): MadeFor {
	if (unitSetting(state, "solution_made") !== "each_round") return "day";
	return reprocessesAfterEachUse(state) ? "kit" : "round";
}

/** What a kit's label says follows from how it stands; where nothing is recorded, a person ticks it. */
function labelOfKit(
	state: State,
	row: ComputedRow<typeof kitRegisterSheet>,
	{ done, unit }: Pick<KitLabel, "unit" | "done">,
): HTMLElement {
	const kind = wordIn(row.kind);
	const named = { unit, kit: wordIn(row.kit), kind };
	const stands = wordIn(row.state);
	if (stands === "incomplete" || stands === "in_repair" || isToReprocess(row))
		return setApartLabel({
			...named,
			state: stands as SetApart["state"],
			reason: sentenceIn(row.reason),
		});
	const isKnownReady = stands === "ready" && wordIn(row.recorded) === "yes";
	const since = wordIn(row.ready_since) || undefined;
	const treated = valueIn(treatedKits(readWorkbook(state.workbook), kind));
	const sterile = treated && isSentAway(treated) && isSterile(treated);
	return kitLabel({
		...named,
		methods: treated?.methods ?? [],
		readyLifeDays: printedSetting(state, sterile ? "sterile_life_days" : "ready_life_days"),
		done: isKnownReady ? since : done,
		isKnownReady,
	});
}

function isToReprocess(row: ComputedRow<typeof kitRegisterSheet>): boolean {
	return wordIn(row.state) === "to_reprocess" && wordIn(row.recorded) !== "no";
}

function times(count: number, of: () => HTMLElement[]): HTMLElement[] {
	return Array.from({ length: count }, of).flat();
}
