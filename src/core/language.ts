/** Language of this build, as BCP 47 has it: the build for another one puts its own code here. */
export const language = "en" as string;

/** Between whole and part of a number that is shown; files always have a point. */
export const decimalSign = decimalSignOf(language);

/** @example "fr" → "," */
export function decimalSignOf(language: string): string {
	const parts = new Intl.NumberFormat(language, { numberingSystem: "latn" }).formatToParts(0.5);
	return parts.find(({ type }) => type === "decimal")?.value ?? ".";
}
