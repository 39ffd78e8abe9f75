/** What every round has, by whatever method: of these a list of steps is asked about where it lacks one. */
export const stepSorts = ["wash", "rinse", "dry"] as const;
export type StepSort = (typeof stepSorts)[number];

/** Beginnings of words by which a step is known, in the languages of the program; they are read, never shown. */
const stems: Readonly<Record<StepSort | "other", RegExp>> = {
	wash: /\b(wash|clean|brush|scrub|soap|lav|nettoy|bross|savon)/i,
	rinse: /\b(rins|rinc)/i,
	dry: /\b(dry|dri|gauze|towel|sech|gaze)/i,
	other: /\b(soak|boil|steam|glove|mix|pack|store|tremp|bouill|vapeur|gant|melang|emball|rang)/i,
};

/**
 * What no step of a list is about.
 *
 * A list without any word that is known may be in another language: nothing is said of it then.
 *
 * @example missingSorts(["Wash in soapy water", "Soak", "Dry in the air"]) // ["rinse"]
 */
export function missingSorts(steps: readonly string[]): StepSort[] {
	const words = steps.map((step) => step.normalize("NFD").replace(/\p{Diacritic}/gu, ""));
	const isAbout = (sort: StepSort | "other") => words.some((step) => stems[sort].test(step));
	const missing = stepSorts.filter((sort) => !isAbout(sort));
	return missing.length === stepSorts.length && !isAbout("other") ? [] : missing;
}
