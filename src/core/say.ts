import { decimalSign } from "./language.ts";

/**
 * Marks text that people read: say`${kits} kits are enough`.
 *
 * The message is its own English: "{0} kits are enough". The catalogues in
 * src/messages/ hold the other languages; a build for one of them puts its words in
 * the place of these, so nothing is looked up while the page runs. Whole sentences,
 * never pieces to be put together: other languages order them differently.
 *
 * A number is written with the decimal sign of the language; other values as they are.
 * @example say`${2.5} L` → "2.5 L"; in French "2,5 L"
 */
export function say(words: TemplateStringsArray, ...values: readonly unknown[]): string {
	return words.reduce((said, next, at) => said + written(values[at - 1]) + next);
}

function written(value: unknown): string {
	return typeof value === "number" ? String(value).replace(".", decimalSign) : String(value);
}
