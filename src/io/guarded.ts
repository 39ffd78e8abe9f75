/**
 * Text that some spreadsheet would run or swallow: it starts (after blanks and
 * invisible characters, which programs skip) with one of = + - @ or their
 * full-width forms, or with a tab or line break. Apostrophes in front count as
 * part of it, so that guarded text can itself be guarded.
 */
const RUNNABLE = /^'*(?:[\t\r\n]|[\s\0\ufeff]*[=+\-@＝＋－＠])/;
const PLAIN_NUMBER = /^[+-](?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d{1,3})?$/i;

function needsGuard(text: string): boolean {
	return RUNNABLE.test(text) && !PLAIN_NUMBER.test(text);
}

/**
 * The text as it goes into a file: an apostrophe in front of what a spreadsheet would run.
 *
 * A plain number such as -5 stands as it is: nothing can run it, and other
 * programs must read a number.
 *
 * @example guarded("=1+1") // "'=1+1"
 */
export function guarded(text: string): string {
	return needsGuard(text) ? `'${text}` : text;
}

/**
 * The text as it was before it was guarded; text that never was stays as it is.
 *
 * @example unguarded("'=1+1") // "=1+1"
 */
export function unguarded(text: string): string {
	return text.startsWith("'") && needsGuard(text.slice(1)) ? text.slice(1) : text;
}
