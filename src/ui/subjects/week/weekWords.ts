import { say } from "../../../core/say.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSettings.ts";

/** What "set aside" and "expected" mean, in plain words, with the unit's own certainty. */
export function weekWords(state: State): string {
	const confidence = unitSetting(state, "plan_confidence") ?? 0.95;
	const of100 = Number((confidence * 100).toPrecision(4));
	return say`Large: what to set aside, enough on at least ${of100} of 100 such days. Small: what is expected on average. In all: for the whole period together, where quiet days make up for busy ones.`;
}
