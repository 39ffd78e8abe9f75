import { decimalSign } from "../language.ts";
import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

interface NumberLimits {
	readonly min: number;
	readonly max: number;
	readonly whole?: boolean;
	/** How a spreadsheet shows it: a price, a share of 100, a share of 1. */
	readonly as?: "money" | "percent" | "share";
}

/** More digits than any quantity on a ward has; longer text is not a number. */
export const LONGEST_NUMBER = 32;
const PLAIN = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d{1,3})?$/i;
const SPACED_THOUSANDS = /^([+-]?\d{1,3})((?:[ \u00a0\u202f\u2009]\d{3})+)(?=$|[.,])/;
/** "1,000" is a thousand to one reader and one to another. */
const TWO_MEANINGS = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/** Whether a text is a number to two readers, but not the same one. */
export const hasTwoMeanings = (text: string) => TWO_MEANINGS.test(text.trim());

/** "1.000": one by the files, a thousand to many who write a decimal comma. */
const POINTED_THOUSAND = /^[+-]?[1-9]\d{0,2}\.\d{3}$/;

/** Whether somebody who types on a page with a decimal comma may mean a thousand times what is read. */
export const mayBeThousand = (text: string, sign = decimalSign) =>
	sign === "," && POINTED_THOUSAND.test(text.trim());

/**
 * Reads a number as people write it: decimal point or comma, spaces between thousands.
 *
 * Text with two meanings ("1,000") is refused, because a wrong guess is a factor of 1,000.
 *
 * @example readNumber("0,5") // 0.5
 */
export function readNumber(text: string): number | undefined {
	const trimmed = text.trim();
	if (trimmed.length > LONGEST_NUMBER || hasTwoMeanings(trimmed)) return undefined;
	const closed = trimmed.replace(SPACED_THOUSANDS, (whole) => whole.replace(/\s/g, ""));
	if (!PLAIN.test(closed)) return undefined;
	const value = Number(closed.replace(",", "."));
	return Number.isFinite(value) ? value : undefined;
}

/** A number from `min` to `max`, both included. */
export function number({ min, max, whole = false, as }: NumberLimits): ValueKind<number> {
	const allowed = whole
		? say`a whole number from ${min} to ${max}`
		: say`a number from ${min} to ${max}`;
	return {
		allowed,
		numeric: true,
		written: as ?? "number",
		tableSchema: {
			type: whole ? "integer" : "number",
			constraints: { minimum: min, maximum: max },
		},
		schema: textSchema(allowed, (text) => {
			const value = readNumber(text);
			if (value === undefined || value < min || value > max) return undefined;
			return whole && !Number.isInteger(value) ? undefined : value;
		}),
		write: writeNumber,
	};
}

const DECIMALS = 6;
/** Nothing a plan gives is told apart beyond this. */
const MOST_DECIMALS = 15;

/**
 * A number for a file: decimal point, six decimals or, below 0.1, six significant
 * ones; no exponent, no trailing zeros.
 *
 * @example writeNumber(2 / 3) // "0.666667"; a chance of 0.0017163479 keeps its "0.00171635"
 */
export function writeNumber(value: number): string {
	const zerosBehindPoint =
		value === 0 ? 0 : Math.max(0, -Math.floor(Math.log10(Math.abs(value))) - 1);
	const text = value.toFixed(Math.min(DECIMALS + zerosBehindPoint, MOST_DECIMALS));
	return text.replace(/\.?0+$/, "").replace(/^-0$/, "0");
}
