import { problemsOf } from "../../../core/outcome.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { type Moment, momentLater, momentOf } from "../../format/moment.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** The rinse water of one round as it is boiled; what waits for something is undefined. */
export interface BoilingRound {
	readonly date: string;
	readonly round: string;
	readonly litres: number | undefined;
	readonly startLitres: number | undefined;
	readonly batches: number | undefined;
	readonly holdMinutes: number | undefined;
	readonly lightBy: Moment | undefined;
	/** The last batch has been held at the boil. */
	readonly offBoil: Moment | undefined;
	readonly coolBy: Moment | undefined;
	/** Why there is no time to light the stove, in words; "" where there is one. */
	readonly waitsFor: string;
}

/** Every round of the boiling sheet, in its order. */
export function boilingRounds(state: State): BoilingRound[] {
	return rowsOf(state.plan, boilingSheet).map((row) => {
		const [batches, holdMinutes, heat, cool] = [
			numberIn(row.batches),
			numberIn(row.hold_minutes),
			numberIn(row.heat_minutes),
			numberIn(row.cool_minutes),
		];
		const lightBy = momentOf(wordIn(row.light_by));
		const onFire =
			batches === undefined || holdMinutes === undefined || heat === undefined
				? undefined
				: heat + batches * holdMinutes;
		return {
			date: wordIn(row.date),
			round: wordIn(row.round),
			litres: numberIn(row.litres),
			startLitres: numberIn(row.start_litres),
			batches,
			holdMinutes,
			lightBy,
			offBoil: lightBy && onFire !== undefined ? momentLater(lightBy, onFire) : undefined,
			coolBy:
				lightBy && onFire !== undefined && cool !== undefined
					? momentLater(lightBy, onFire + cool)
					: undefined,
			waitsFor: row.light_by ? (problemsOf(row.light_by.outcome)[0]?.message ?? "") : "",
		};
	});
}
