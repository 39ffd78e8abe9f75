import type { State } from "../book/store.ts";
import { unitSetting } from "./unitSettings.ts";

/** What "set aside" and "expected" mean, in plain words, with the unit's own certainty. */
export function weekWords(state: State): string {
	const confidence = unitSetting(state, "plan_confidence") ?? 0.95;
	const of100 = Number((confidence * 100).toPrecision(4));
	return `Large: what to set aside, enough on at least ${of100} of 100 such days. Small: what is expected on average. A week's total is smaller than its days added up, because quiet days make up for busy ones. Births can be typed over.`;
}
