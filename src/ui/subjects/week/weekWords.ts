import { say } from "../../../core/say.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { State } from "../../state/store.ts";
import { printedSetting } from "../../state/unitSetting.ts";

/** What "set aside" and "expected" mean, in plain words, with the unit's own certainty. */
export function weekWords(state: State): string {
	const { value, why } = printedSetting(state, "plan_confidence");
	const of100 = value === undefined ? TO_WRITE : Number((value * 100).toPrecision(4));
	const words = say`Large: what to prepare for, enough on at least ${of100} of 100 such days. Small: the average. In the row of births the other way round: large is the figure typed or forecast, small what the plan prepares for. In all: for the whole period together, where quiet days make up for busy ones.`;
	return [words, why].filter(Boolean).join(" ");
}
