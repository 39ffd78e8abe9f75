import type { Figure } from "../../core/calculation.ts";
import type { Column } from "../../core/column.ts";
import type { Counts } from "../../core/counts/counts.ts";
import { decimalSign } from "../../core/language.ts";
import { say } from "../../core/say.ts";
import { shownWord } from "./choiceWords.ts";
import { daysInWords } from "./daysInWords.ts";
import { partWords } from "./partWords.ts";
import { semicolon } from "./semicolon.ts";
import { shownDay } from "./shownDay.ts";
import { shownNumber, shownPlain, shownUp } from "./shownNumber.ts";

/** Stands where there is no answer; the reason is beside it. */
export const DASH = "–";

const LONGEST_LIST = 4;
const DIGITS_IN_LISTS = 3;
const MOST_CHANCES = 6;

/** The value of a figure of any kind in words, or a dash. */
export function shownFigure(figure: Figure<unknown>): string {
	return figure.outcome.ok ? shownValue(figure.outcome.value) : DASH;
}

/** The value of a cell of a computed sheet as its column asks. */
export function shownCell(column: Column<unknown>, figure: Figure<unknown>): string {
	if (!figure.outcome.ok) return DASH;
	const { value } = figure.outcome;
	if (typeof value === "string") return shownText(column, value);
	return typeof value === "number" ? shownAs(column, value) : shownValue(value);
}

/** A number as its column asks: its decimals, and up where it must be enough. */
export function shownAs(
	{ decimals, mixed, rounds }: Pick<Column<unknown>, "decimals" | "mixed" | "rounds">,
	value: number,
): string {
	if (decimals === undefined) return shownPlain(value);
	const shown = rounds === "up" ? shownUp(value, decimals) : shownNumber(value, decimals);
	return mixed ? withoutZeros(shown, decimals) : shown;
}

/** Without decimals that say nothing: 4 kits, not 4.0. */
function withoutZeros(shown: string, decimals: number): string {
	const zeros = `${decimalSign}${"0".repeat(decimals)}`;
	return shown.endsWith(zeros) ? shown.slice(0, -zeros.length) : shown;
}

function shownText({ signed, coded, value: kind }: Column<unknown>, text: string): string {
	if (signed) return text.replace(/^-/, "−").replace(".", decimalSign);
	if (kind.tableSchema.type === "date") return shownDay(text);
	if (kind.options || coded) return shownWord(text);
	return daysInWords(text);
}

function shownValue(value: unknown): string {
	if (value === null || value === undefined || value === "") return "";
	if (typeof value === "number") return shownPlain(value);
	if (Array.isArray(value)) return shownList(value);
	if (isCounts(value)) return shownChances(value);
	if (typeof value === "object") return shownParts(value);
	if (typeof value === "boolean") return shownWord(value ? "yes" : "no");
	return shownWord(String(value));
}

function isCounts(value: unknown): value is Counts {
	return typeof value === "object" && value !== null && "chance" in value && "first" in value;
}

const LEAST_CHANCE = 0.005;

/** How likely each number is, the likely ones only: "0: 41 %, 1: 43 %, 2: 14 %". */
function shownChances({ first, chance }: Counts): string {
	const likely = [...chance]
		.map((p, i) => ({ count: first + i, p }))
		.filter(({ p }) => p >= LEAST_CHANCE);
	if (likely.length > MOST_CHANCES) {
		const from = likely[0]?.count;
		return say`mostly ${from} to ${likely.at(-1)?.count}`;
	}
	return likely.map(({ count, p }) => say`${count}: ${Math.round(100 * p)} %`).join(", ");
}

function shownList(values: readonly unknown[]): string {
	const first = values.slice(0, LONGEST_LIST).map(shownBriefly).join(semicolon);
	return values.length > LONGEST_LIST ? say`${first}; … (${values.length} in all)` : first;
}

/** Long lists stand for a shape, so three digits say enough. */
function shownBriefly(value: unknown): string {
	return typeof value === "number"
		? shownPlain(Number(value.toPrecision(DIGITS_IN_LISTS)))
		: shownValue(value);
}

/** A part without a name for people is of use to the program alone. */
function shownParts(value: object): string {
	return Object.entries(value)
		.flatMap(([name, part]) => {
			const words = partWords[name];
			return words === undefined || typeof part === "function" ? [] : [{ words, part }];
		})
		.slice(0, LONGEST_LIST)
		.map(({ words, part }) => [words, shownValue(part)])
		.filter(([, words]) => words !== "")
		.map((named) => named.join(" "))
		.join(", ");
}
