import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import type { FileReport } from "./orderPile.ts";

const MOST_FILES = 100;
const MOST_PROBLEMS = 3;

/** Files of which something has to be said: whether they are used, and what was found, where. */
export function reportList(reports: readonly FileReport[]): HTMLElement {
	const left = reports.length - MOST_FILES;
	return el(
		"section",
		{ class: "problems", "aria-label": say`Files with problems` },
		el("h2", {}, say`${counted(reports.length, "file")} to look at`),
		el(
			"ul",
			{ class: "problem-list" },
			...reports.slice(0, MOST_FILES).map(reportOf),
			left > 0 && el("li", {}, say`… and ${left} more.`),
		),
	);
}

function reportOf({ file, problems, items }: FileReport): HTMLLIElement {
	const left = problems.length - MOST_PROBLEMS;
	return el(
		"li",
		{},
		el("span", { class: "problem-mark", "aria-hidden": "true" }, items === 0 ? "!" : "i"),
		el(
			"div",
			{},
			el("strong", {}, file),
			items === 0 ? say`: not used.` : say`: ${counted(items, "item")} used; look at the rest.`,
			...problems
				.slice(0, MOST_PROBLEMS)
				.map(({ line, message }) =>
					el(
						"p",
						{},
						line === null || message.includes(say`line ${line}`)
							? message
							: say`Line ${line}. ${message}`,
					),
				),
			left > 0 && el("p", {}, say`… and ${counted(left, "problem")} more in this file.`),
		),
	);
}
