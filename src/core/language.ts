/** Language of this build, as BCP 47 has it: the build for another one puts its own code here. */
export const language = "en" as string;

/** Whether nobody has reviewed this language: then texts of safety have their English beside them. A build says so too. */
export const isUnreviewed = false as boolean;

/** Between whole and part of a number that is shown; files always have a point. */
export const decimalSign = decimalSignOf(language);

/** @example "fr" → "," */
export function decimalSignOf(language: string): string {
	const half = new Intl.NumberFormat(language, { numberingSystem: "latn" }).format(0.5);
	return half.replace(/\d/g, "");
}
