import { type Language, languages } from "../../messages/languages.ts";
import { reviewStateOf } from "../../messages/reviewStateOf.ts";

/**
 * The languages that go onto a memory stick: those of the list that somebody has
 * reviewed or is asked to, and others only where they are asked for.
 *
 * @param stateOf how far a language has been reviewed
 */
export function languagesOnStick(
	askedFor: readonly string[],
	stateOf: typeof reviewStateOf = reviewStateOf,
): Language[] {
	const all = languages.map(({ code }) => code);
	const unknown = askedFor.find((code) => !all.some((listed) => listed === code));
	if (unknown !== undefined)
		throw new Error(`No language of the site: ${unknown}. There are ${all.join(", ")}.`);
	return all.filter((code) => stateOf(code) !== "not reviewed" || askedFor.includes(code));
}
