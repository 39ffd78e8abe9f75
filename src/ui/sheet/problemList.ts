import type { Place, Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { problemWords } from "../format/problemWords.ts";
import { titleOf } from "../shell/titleOf.ts";

const MOST_SHOWN = 100;
const LAST_ON_PAPER = 2;

/** Open problems in words, each with a way to its place; what only needs a look stands apart. */
export function problemList(
	problems: readonly Problem[],
	goTo: (place: Place) => void,
	heading = say`Open problems`,
): HTMLElement {
	const errors = problems.filter((problem) => problem.weight === "error");
	const advice = problems.filter((problem) => problem.weight === "advice");
	if (problems.length === 0)
		return el("section", { class: "problems" }, el("p", { class: "none" }, say`No open problems.`));
	return el(
		"section",
		{ class: "problems", "aria-label": heading },
		...part(say`${heading}: put right`, "error", errors, goTo),
		...part(say`Worth a look; the numbers stand`, "advice", advice, goTo),
	);
}

function part(
	heading: string,
	name: string,
	problems: readonly Problem[],
	goTo: (place: Place) => void,
): Child[] {
	if (problems.length === 0) return [];
	const left = problems.length - MOST_SHOWN;
	return [
		el("h2", {}, `${heading} (${problems.length})`),
		el(
			"ul",
			{ class: `problem-list ${name}` },
			...problems.slice(0, MOST_SHOWN).map((problem, at) => problemItem(problem, goTo, at)),
			left > 0 && el("li", {}, say`… and ${left} more.`),
		),
	];
}

/** One problem in words, with a way to its place. @param at its place in a list of which paper shows the first few */
export function problemItem(
	problem: Problem,
	goTo: (place: Place) => void,
	at?: number,
): HTMLLIElement {
	const where = [problem.file && titleOf(problem.file), problem.line && say`line ${problem.line}`]
		.filter(Boolean)
		.join(", ");
	return el(
		"li",
		// On paper no more than these are shown, and the last of them says so.
		at === LAST_ON_PAPER ? { "data-more": say`More problems are listed on the screen.` } : {},
		el(
			"span",
			{ class: "problem-mark", "aria-hidden": "true" },
			problem.weight === "error" ? "!" : "i",
		),
		el("span", { class: "problem-words" }, problemWords(problem)),
		where !== "" &&
			el(
				"button",
				{ type: "button", class: "link", onclick: () => goTo(problem) },
				say`Go to ${where}`,
			),
	);
}
