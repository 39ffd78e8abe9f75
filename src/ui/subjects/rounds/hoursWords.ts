import { say } from "../../../core/say.ts";
import { shownUp } from "../../format/shownNumber.ts";

/** People's hours of a day's rounds, and the fires' where one is lit. */
export function hoursWords(hours: { readonly handsOn: number; readonly atFires: number }): string {
	const [handsOn, atFires] = [shownUp(hours.handsOn, 1), shownUp(hours.atFires, 1)];
	return hours.atFires === 0
		? say`If every round runs with the kits it prepares for, people work on it for ${handsOn} hours in all.`
		: say`If every round runs with the kits it prepares for, people work on it for ${handsOn} hours in all; the fires for these rounds burn ${atFires} hours, and someone stays near them.`;
}
