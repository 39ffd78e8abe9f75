import { settings } from "../core/sheets/settings.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import { shownWord } from "../ui/format/choiceWords.ts";
import { catalogueOf } from "./catalogueOf.ts";
import { translations } from "./languages.ts";

/** Where the table stands: the core may not look into the catalogues. */
export const WORDS_FILE = "../core/values/wordsOfChoices.json";

/** For each code that a person can choose, the words that pages show for it in every language. */
export function wordsOfChoices(): Readonly<Record<string, readonly string[]>> {
	const catalogues = translations.map(catalogueOf);
	const columns = [...typedSheets.map((sheet) => sheet.columns), settings].flatMap((all) =>
		Object.values(all),
	);
	const codes = new Set(columns.flatMap(({ value }): readonly string[] => value.options ?? []));
	return Object.fromEntries(
		[...codes].sort().map((code) => {
			const shown = shownWord(code);
			const words = [shown, ...catalogues.map((catalogue) => catalogue.get(shown) ?? shown)];
			return [code, [...new Set(words)].filter((word) => word !== code)];
		}),
	);
}

/** The table as it stands in its file: a code a line, however long, which no formatter touches. */
export function wordsText(): string {
	const lines = Object.entries(wordsOfChoices()).map(
		([code, words]) => `\t"${code}": [${words.map((word) => JSON.stringify(word)).join(", ")}]`,
	);
	return `{\n${lines.join(",\n")}\n}\n`;
}
