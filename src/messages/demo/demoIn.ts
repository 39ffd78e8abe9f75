import type { TextTable } from "../../core/workbook.ts";
import { demoSettings, demoTexts } from "./demoTexts.ts";

/** The words of a language for the demo: kind of text → English → words. */
export type DemoWords = Readonly<Record<string, Readonly<Record<string, string>>>>;

/**
 * A sheet of the demo in another language: the same numbers, marks and codes under names
 * that are read there.
 *
 * @param wordsOf the words of a text; what it gives back stands in the cell
 */
export function demoIn(
	file: string,
	{ header, rows }: TextTable,
	wordsOf: (kind: string, text: string) => string,
): TextTable {
	const kinds = header.map((column) =>
		Object.keys(demoTexts).find((kind) => demoTexts[kind]?.includes(`${file}: ${column}`)),
	);
	const key = file === "unit.csv" ? header.indexOf("key") : -1;
	const isText = (cells: readonly string[]) => key < 0 || demoSettings.includes(cells[key] ?? "");
	return {
		header,
		rows: rows.map((cells) =>
			cells.map((text, at) => {
				const kind = kinds[at];
				return kind !== undefined && text !== "" && isText(cells) ? wordsOf(kind, text) : text;
			}),
		),
	};
}
