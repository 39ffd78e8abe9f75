import { valueIn } from "../../../core/outcome.ts";
import { rounded } from "../../../core/rounded.ts";
import { say } from "../../../core/say.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { Compared } from "./comparedFigures.ts";

const PLAIN_DECIMALS = 1;

/** What changes from the left side to the right one, and whether that is better, where anyone would say so. */
export interface Difference {
	readonly text: string;
	readonly verdict: "" | "better" | "worse";
}

/** The difference between the numbers as they are shown, so that it can be checked by eye. */
export function differenceOf(compared: Compared): Difference {
	const { left, right, column } = compared;
	const [before, after] = [left, right].map((figure) => figure && valueIn(figure));
	if (before === undefined || after === undefined) return { text: "", verdict: "" };
	if (typeof before !== "number" || typeof after !== "number")
		return { text: before === after ? say`the same` : say`another`, verdict: "" };
	const decimals = column.decimals ?? PLAIN_DECIMALS;
	const change = rounded(column, after) - rounded(column, before);
	const size = shownNumber(Math.abs(change), decimals);
	if (Math.abs(change) < 10 ** -decimals / 2) return { text: say`the same`, verdict: "" };
	const better = change < 0 ? "better" : "worse";
	return { text: `${change < 0 ? "−" : "+"}${size}`, verdict: compared.lessIsBetter ? better : "" };
}
