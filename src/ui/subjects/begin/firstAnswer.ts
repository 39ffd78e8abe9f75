import { isGiven } from "../../../core/edit/begin/beginEntry.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import type { Measure } from "../../../core/sheets/planMeasures.ts";
import { weekTotalSheet } from "../../../core/sheets/weekTotal.ts";
import { type Child, el } from "../../dom/el.ts";
import { DASH, shownCell } from "../../format/shownFigure.ts";
import type { Surroundings } from "../../page.ts";
import { problemList } from "../../sheet/problemList.ts";
import { daysOf } from "../../state/daysOf.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { waysOf } from "../../state/waysOf.ts";
import { planTitle } from "../week/planTitle.ts";
import { weekHeadline } from "../week/weekHeadline.ts";
import { askedEntries, type ShownEntry } from "./shownEntries.ts";
import { whatNext } from "./whatNext.ts";

/** Entries that are not given and for which nothing else stands in. */
export function missingEntries({ workbook }: State): ShownEntry[] {
	return askedEntries(workbook).filter(
		(entry) => entry.blank === undefined && !isGiven(entry, workbook),
	);
}

/** What is still missing after each entry, and what may stay blank, in a sentence or two. */
export function missingWords(state: State): string {
	const missing = missingEntries(state).map(({ label }) => label);
	const blank = askedEntries(state.workbook)
		.filter((entry) => entry.blank !== undefined && !isGiven(entry, state.workbook))
		.map((entry) => `${entry.label} (${entry.blank})`);
	return [
		missing.length > 0 && say`Still missing: ${missing.join(", ")}.`,
		blank.length > 0 && say`May stay blank: ${blank.join(", ")}.`,
	]
		.filter(Boolean)
		.join(" ");
}

/** The answer of the first plan and what to do next; where all is entered and there is none, why. */
export function firstAnswer(state: State, { goTo }: Surroundings): Child[] {
	const missing = missingEntries(state);
	const errors = state.plan.problems.filter(({ weight }) => weight === "error");
	return [
		!state.plan.made &&
			missing.length === 0 &&
			problemList(errors, goTo, say`The plan needs a number`),
		...(state.plan.made ? answer(state, goTo) : []),
	];
}

function answer(state: State, goTo: Surroundings["goTo"]): Child[] {
	const open = async () => {
		await goTo({ file: planTitle.file, line: null, column: "" });
		document.getElementById("sheet")?.focus();
	};
	const print = async () => {
		await open();
		window.print();
	};
	return [
		el("h2", {}, say`Your first plan`),
		el("p", { class: "begin-answer" }, weekHeadline(state)),
		el("p", {}, amounts(state)),
		el(
			"p",
			{ class: "choices-row" },
			el(
				"button",
				{ type: "button", class: "main", id: "begin-open", onclick: open },
				say`Open the plan`,
			),
			el("button", { type: "button", onclick: print }, say`Print the plan`),
		),
		el("h2", {}, say`What makes it better`),
		el(
			"ul",
			{},
			...whatNext(state.workbook).map(({ words, place }) =>
				el(
					"li",
					{},
					el("button", { type: "button", class: "link", onclick: () => goTo(place) }, words),
				),
			),
		),
	];
}

/** What is to be prepared in the days of the plan. */
export function amounts(state: State): string {
	const total = (measure: Measure) => {
		const row = rowsOf(state.plan, weekTotalSheet).find(
			(each) => wordIn(each.measure_of) === measure,
		);
		return row ? shownCell(weekTotalSheet.columns.set_aside, row.set_aside) : DASH;
	};
	const days = daysOf(state).length;
	const inDays =
		days === 1 ? say`To prepare for on this one day:` : say`To prepare for in these ${days} days:`;
	const { treated } = waysOf(state);
	if (!treated.has("chlorine"))
		return say`${inDays} ${total("boiled_litres")} L of water to boil or steam pieces, and no chlorine solution.`;
	return treated.size > 1 && (treated.has("boiling") || treated.has("steam"))
		? say`${inDays} ${total("solution_litres")} L of chlorine solution and ${total("boiled_litres")} L of boiled water, to rinse with and for pieces.`
		: say`${inDays} ${total("solution_litres")} L of chlorine solution and ${total("boiled_litres")} L of boiled, cooled water.`;
}
