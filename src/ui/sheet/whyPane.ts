import type { Figure } from "../../core/calculation.ts";
import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { type Child, el, fill } from "../dom/el.ts";
import { capital } from "../format/capital.ts";
import { problemWords } from "../format/problemWords.ts";
import { sourceWords } from "./sourceWords.ts";
import { type Explanation, type Ingredient, why } from "./why.ts";

/** Shows why a number is what it is; computed ingredients open in turn, with a way back. */
export function whyPane(
	pane: HTMLElement,
	figures: readonly Figure<unknown>[],
	goTo: (place: Place) => void,
): void {
	const open = (trail: readonly Figure<unknown>[]) => {
		const last = trail.at(-1);
		const shown = last ? [last] : figures;
		const back = () => open(trail.slice(0, -1));
		fill(
			pane,
			el("h2", {}, say`Why this number?`),
			trail.length > 0 &&
				el("button", { type: "button", class: "quiet", onclick: back }, say`← Back`),
			...shown.flatMap((figure) =>
				explanation(why(figure), (deeper) => open([...trail, deeper]), goTo),
			),
		);
		if (trail.length > 0) pane.querySelector<HTMLElement>("button")?.focus();
	};
	open([]);
}

function explanation(
	said: Explanation,
	open: (figure: Figure<unknown>) => void,
	goTo: (place: Place) => void,
): Child[] {
	const { place } = said;
	return [
		el(
			"section",
			{ class: "why" },
			el("h3", {}, said.label),
			el("p", { class: "why-value" }, said.value || say`blank`, " ", unitOf(said.unit)),
			...said.problems.map((p) =>
				el("p", { class: "reason" }, say`Needs:`, " ", placeLink(problemWords(p), p, goTo)),
			),
			said.origin &&
				el("p", {}, capital(said.origin), ". ", place && placeLink(say`Go there`, place, goTo)),
			said.caution &&
				el("p", { class: "caution" }, el("strong", {}, say`Caution.`), " ", said.caution),
			said.formula && el("p", { class: "formula" }, said.formula),
			said.ingredients.length > 0 &&
				el("ul", { class: "ingredients" }, ...said.ingredients.map((i) => line(i, open, goTo))),
			said.rounding && el("p", {}, el("strong", {}, say`Rounding.`), " ", said.rounding),
			said.promise && el("p", {}, el("strong", {}, say`How safe.`), " ", said.promise),
			said.source && el("p", { class: "source" }, ...sourceWords(said.source)),
		),
	];
}

function line(
	{ label, unit, value, origin, place, figure }: Ingredient,
	open: (figure: Figure<unknown>) => void,
	goTo: (place: Place) => void,
): HTMLLIElement {
	const go = figure
		? el(
				"button",
				{ type: "button", class: "link", onclick: () => open(figure) },
				say`computed: why?`,
			)
		: place?.file
			? placeLink(origin, place, goTo)
			: el("span", {}, origin);
	return el(
		"li",
		{},
		el("span", { class: "ingredient-label" }, label),
		el("span", { class: "ingredient-value" }, value || say`blank`, " ", unitOf(unit)),
		el("span", { class: "ingredient-origin" }, go),
	);
}

function placeLink(words: string, place: Place, goTo: (place: Place) => void): HTMLElement {
	if (place.file === "") return el("span", {}, words);
	return el("button", { type: "button", class: "link", onclick: () => goTo(place) }, words);
}

function unitOf(unit: string): HTMLElement {
	return el("span", { class: "unit" }, unit);
}
