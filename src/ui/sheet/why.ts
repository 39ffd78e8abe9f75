import type { Figure } from "../../core/calculation.ts";
import { promiseOf } from "../../core/counts/promiseOf.ts";
import type { Place, Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import type { Source } from "../../core/source.ts";
import { shownFigure } from "../format/shownFigure.ts";
import { shownPlain } from "../format/shownNumber.ts";
import { shownOf100 } from "../format/shownOf100.ts";
import { titleOf } from "../shell/titleOf.ts";

/** One thing that went into a number. */
export interface Ingredient {
	readonly label: string;
	readonly unit: string;
	readonly value: string;
	/** Where it comes from, in words. */
	readonly origin: string;
	/** Where it was typed, to go there. */
	readonly place?: Place;
	/** A computed ingredient can be asked "why?" in its turn. */
	readonly figure?: Figure<unknown>;
}

/** Everything the program can say about a number. */
export interface Explanation {
	readonly label: string;
	readonly unit: string;
	readonly value: string;
	/** Where a typed or default figure comes from; absent for a computed one. */
	readonly origin?: string;
	readonly place?: Place;
	readonly formula?: string;
	readonly rounding?: string;
	/** How sure what was set aside is to be enough, beside what was asked. */
	readonly promise?: string;
	readonly caution?: string;
	readonly source?: Source;
	readonly ingredients: readonly Ingredient[];
	/** Why there is no number. */
	readonly problems: readonly Problem[];
}

/** Explains a figure from its origin; nothing is written twice for it. */
export function why(figure: Figure<unknown>): Explanation {
	const { label, unit, outcome, origin } = figure;
	const said = {
		label,
		unit,
		value: shownFigure(figure),
		problems: outcome.ok ? [] : outcome.problems,
	};
	if (origin.kind !== "computed")
		return { ...said, origin: originWords(figure), ...placeOf(figure), ingredients: [] };
	const { formula, rounding, caution, source, inputs } = origin.calculation;
	const promise = promiseWords(figure);
	return {
		...said,
		formula,
		source,
		...(rounding === undefined ? {} : { rounding }),
		...(promise === undefined ? {} : { promise }),
		...(caution === undefined ? {} : { caution }),
		ingredients: Object.entries(origin.inputs).map(([key, input]) =>
			ingredient(input, inputs[key]?.label, inputs[key]?.unit),
		),
	};
}

/** "Enough on 99.7 of 100 …": whole things are often safer than asked. */
function promiseWords(figure: Figure<unknown>): string | undefined {
	const promise = promiseOf(figure);
	if (!promise) return undefined;
	const [asked, enough] = [shownOf100(promise.asked), shownOf100(promise.enough)];
	const kept = say`Enough on ${enough} of 100 such days or plans; ${asked} were asked.`;
	if (!promise.less) return kept;
	const { amount, enough: chance } = promise.less;
	const less = say`The next smaller there is, ${shownPlain(amount)}, would be enough on ${shownOf100(chance)}.`;
	return `${kept} ${less}`;
}

function ingredient(figure: Figure<unknown>, label?: string, unit?: string): Ingredient {
	return {
		label: label || figure.label,
		unit: unit || figure.unit,
		value: shownFigure(figure),
		origin: originWords(figure),
		...placeOf(figure),
		...(figure.origin.kind === "computed" ? { figure } : {}),
	};
}

function placeOf({ origin }: Figure<unknown>): { readonly place?: Place } {
	return origin.kind === "typed" || origin.kind === "default" ? { place: origin.place } : {};
}

function originWords({ origin }: Figure<unknown>): string {
	if (origin.kind === "computed") return say`computed`;
	if (origin.kind === "name") return say`the name of this row`;
	const { file, line } = origin.place;
	const where = file === "" ? "" : titleOf(file);
	if (origin.kind === "default") return where === "" ? say`default` : say`default; ${where}`;
	const at = line === null ? where : say`${where}, line ${line}`;
	return at === "" ? say`typed in` : say`typed in: ${at}`;
}
