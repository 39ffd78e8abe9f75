import { valueIn } from "../../../core/outcome.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import type { CoolingPot } from "../../../core/water/coolingCurve.ts";
import { numberIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** How the plan's water cools, read off the figure of the boiling sheet itself. */
export interface Cooling {
	readonly pot: CoolingPot;
	readonly wantedC: number;
	/** Undefined where it never cools so far. */
	readonly minutes: number | undefined;
	/** Whose rate it is: two readings of the unit's own pot, a figure typed in, or the starting value. */
	readonly rateFrom: "reading" | "typed" | "default";
}

/** Undefined where there are no rounds, or something that the cooling needs cannot be read. */
export function coolingOf(state: State): Cooling | undefined {
	const figure = rowsOf(state.plan, boilingSheet)[0]?.cool_minutes;
	if (figure?.origin.kind !== "computed") return undefined;
	const { inputs } = figure.origin;
	const number = (key: string) => {
		const value = inputs[key] && valueIn(inputs[key]);
		return typeof value === "number" ? value : undefined;
	};
	const [fromC, roomC, coolingPerHour, potLitres, wantedC] = [
		number("fromC"),
		number("roomC"),
		number("coolingPerHour"),
		number("potLitres"),
		number("toC"),
	];
	if (fromC === undefined || roomC === undefined || coolingPerHour === undefined) return undefined;
	if (potLitres === undefined || wantedC === undefined) return undefined;
	const origin = inputs.coolingPerHour?.origin.kind;
	return {
		pot: { fromC, roomC, coolingPerHour, potLitres },
		wantedC,
		minutes: numberIn(figure),
		rateFrom: origin === "computed" ? "reading" : origin === "typed" ? "typed" : "default",
	};
}
