/** One language that the site is built in. */
interface LanguageOfSite {
	/** As web pages name it, BCP 47: also the name of its catalogue's folder and of its part of the site. */
	readonly code: string;
	/** As its speakers write it. */
	readonly name: string;
	readonly direction: "ltr" | "rtl";
}

/**
 * Every language of the site, and the only list of them. The first is the one that
 * messages are written in: it needs no catalogue and lies at the top of the site. How
 * far each translation has been reviewed stands in reviews.json.
 */
export const languages = [
	{ code: "en", name: "English", direction: "ltr" },
	{ code: "fr", name: "Français", direction: "ltr" },
	{ code: "pt", name: "Português", direction: "ltr" },
] as const satisfies readonly LanguageOfSite[];

export type Language = (typeof languages)[number]["code"];

/** The languages that have a catalogue. */
export const translations = languages.slice(1).map(({ code }) => code);

/** Where the site of a language lies within the whole: "" or, for example, "fr/". */
export function folderOf(language: string): string {
	return language === languages[0].code ? "" : `${language}/`;
}
