import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { type Moment, momentLater, momentOf } from "../../format/moment.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** A fire, or a round for which there is none; what waits for something is undefined. */
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
	/** By number: "1, 2"; "" where that is not known. */
	readonly pots: string;
	/** Under which condition it is lit; "" where it is in any case. */
	readonly onlyIf: string;
	/** How a load of pieces is disinfected on it; "" where water is boiled to rinse with. */
	readonly pieces: string;
	/** Why there is no time to light the stove, in words; "" where there is one. */
	readonly waitsFor: string;
}

/** Every fire of the boiling sheet by the clock, then the rounds without one. */
export function boilingRounds(state: State): BoilingRound[] {
	return rowsOf(state.plan, boilingSheet).map((row) => {
		const [batches, holdMinutes, heat, cool] = [
			numberIn(row.batches),
			numberIn(row.hold_minutes),
			numberIn(row.heat_minutes),
			numberIn(row.cool_minutes),
		];
		const pieces = wordIn(row.pieces);
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
				lightBy && pieces === "" && onFire !== undefined && cool !== undefined
					? momentLater(lightBy, onFire + cool)
					: undefined,
			pots: wordIn(row.pots),
			onlyIf: wordIn(row.only_if),
			pieces,
			waitsFor: waitsFor(row.light_by?.outcome),
		};
	});
}
