import { glossary } from "../core/glossary.ts";
import { catalogueOf } from "./catalogueOf.ts";
import { languages, translations } from "./languages.ts";

/** Where the table stands, for the page of words: pages may not look into the catalogues. */
export const TERMS_FILE = "../ui/subjects/words/termsInLanguages.json";

/** The terms of the glossary in every language of the site, each list in the glossary's order. */
export function termsInLanguages(): Readonly<Record<string, readonly string[]>> {
	const terms = glossary.map(({ term }) => term);
	const translated = translations.map((language) => {
		const catalogue = catalogueOf(language);
		return [language, terms.map((term) => catalogue.get(term) ?? "")];
	});
	return Object.fromEntries([[languages[0].code, terms], ...translated]);
}

/** As the file holds it. */
export function termsText(): string {
	return `${JSON.stringify(termsInLanguages(), null, "\t")}\n`;
}
