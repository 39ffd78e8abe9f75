import type { Figure } from "../../core/calculation.ts";
import type { Column } from "../../core/column.ts";
import { shownNumber, shownPlain, shownUp } from "./shownNumber.ts";

/** Stands where there is no answer; the reason is beside it. */
export const DASH = "–";

const LONGEST_LIST = 4;
const DIGITS_IN_LISTS = 3;

/** The value of a figure of any kind in words, or a dash. */
export function shownFigure(figure: Figure<unknown>): string {
	return figure.outcome.ok ? shownValue(figure.outcome.value) : DASH;
}

/** The value of a cell of a computed sheet as its column asks: decimals, and up where it is set aside. */
export function shownCell(key: string, column: Column<unknown>, figure: Figure<unknown>): string {
	if (!figure.outcome.ok) return DASH;
	const { value } = figure.outcome;
	if (typeof value !== "number" || !column.value.numeric) return shownValue(value);
	const { decimals } = column;
	if (decimals === undefined) return shownPlain(value);
	return key.endsWith("set_aside") ? shownUp(value, decimals) : shownNumber(value, decimals);
}

function shownValue(value: unknown): string {
	if (value === null || value === undefined || value === "") return "";
	if (typeof value === "number") return shownPlain(value);
	if (Array.isArray(value)) return shownList(value);
	if (value instanceof Float64Array) return shownList([...value]);
	if (typeof value === "object") return shownParts(value);
	return String(value);
}

function shownList(values: readonly unknown[]): string {
	const first = values.slice(0, LONGEST_LIST).map(shownBriefly).join("; ");
	return values.length > LONGEST_LIST ? `${first}; … (${values.length} in all)` : first;
}

/** Long lists stand for a shape, so three digits say enough. */
function shownBriefly(value: unknown): string {
	return typeof value === "number"
		? shownPlain(Number(value.toPrecision(DIGITS_IN_LISTS)))
		: shownValue(value);
}

function shownParts(value: object): string {
	return Object.entries(value)
		.filter(([, part]) => typeof part !== "function")
		.slice(0, LONGEST_LIST)
		.map(([name, part]) => `${name} ${shownValue(part)}`)
		.join(", ");
}
