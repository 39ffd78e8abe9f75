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
	return words.reduce((before, next, at) => {
		const said = before + written(values[at - 1]);
		// A value that ends with a point, such as "févr.", ends the sentence with it.
		return said.endsWith(".") && next.startsWith(".") ? said + next.slice(1) : said + next;
	});
}

/**
 * Marks text on which somebody's safety hangs: cautions, mixing steps, labels, first aid.
 *
 * In a language whose translation nobody has reviewed the build puts the English beside
 * it: say.safety`No soap in it.` → "Sem sabão. / No soap in it." Everywhere else it is say.
 */
say.safety = (words: TemplateStringsArray, ...values: readonly unknown[]): string =>
	say(words, ...values);

/** Between the words of such a text and the English: spaces that nobody types, so that a page can tell them apart. */
export const BESIDE = "\u2002/\u2002";

function written(value: unknown): string {
	return typeof value === "number" ? String(value).replace(".", decimalSign) : String(value);
}
