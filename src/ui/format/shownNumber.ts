import { decimalSign, language } from "../../core/language.ts";
import { memoize } from "../../core/memoize.ts";
import { upTo } from "../../core/upTo.ts";

/** Stands between thousands in every language: a space at which no line breaks, and which no one takes for a decimal sign. */
const THIN_SPACE = "\u202f";
/** Where the language parts the digits of a whole number. */
const wholes = new Intl.NumberFormat(language, { numberingSystem: "latn" });
/** No language parts fewer digits than these. */
const LONG = /^-?\d{4,}$/;

/** A number for reading: fixed decimals, thin space between thousands; a little is never shown as nothing. */
export function shownNumber(value: number, decimals: number): string {
	const digits = value.toFixed(decimals);
	if (Number(digits) === 0 && value > 0) return `<${spaced((10 ** -decimals).toFixed(decimals))}`;
	return spaced(digits);
}

/** The same, rounded up: what is set aside must never be shown as less than it is. */
export function shownUp(value: number, decimals: number): string {
	return spaced(upTo(value, 10 ** -decimals).toFixed(decimals));
}

/** A number of unknown measure: at most six significant digits. */
export function shownPlain(value: number): string {
	const digits = Math.abs(value) >= 1e6 ? value.toFixed(0) : String(Number(value.toPrecision(6)));
	return spaced(digits);
}

/** Two digits are all that an estimate can say. */
export function twoDigits(value: number): string {
	return shownPlain(Number(value.toPrecision(2)));
}

function spaced(digits: string): string {
	const [whole = "", part] = digits.split(".");
	const grouped = LONG.test(whole) ? inGroups(whole) : whole;
	return part === undefined ? grouped : `${grouped}${decimalSign}${part}`;
}

/** The browser takes long over each; most stay as they were. */
const inGroups = memoize((whole: string): string =>
	wholes
		.formatToParts(BigInt(whole))
		.map(({ type, value }) => (type === "group" ? THIN_SPACE : value))
		.join(""),
);
