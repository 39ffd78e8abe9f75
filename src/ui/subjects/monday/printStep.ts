import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { printOut } from "../../print/printOut.ts";
import { printLog } from "../bench/printLog.ts";
import type { StepPart } from "./mondayStep.ts";
import { papersOfWeek } from "./papersOfWeek.ts";

/** Every paper of the week as one job; which of them, a person chooses. */
export const printStep: StepPart = ({ store }, { done }) => {
	const reason = el("p", { class: "reason", role: "alert" });
	const boxes = papersOfWeek.map((paper) => ({
		paper,
		box: el("input", { type: "checkbox", checked: true }),
	}));
	const print = () => {
		const chosen = boxes.filter(({ box }) => box.checked).map(({ paper }) => paper);
		fill(reason, chosen.length === 0 && say`Choose at least one paper.`);
		if (chosen.length === 0) return;
		const pages = () => chosen.flatMap((paper) => paper.pages(store.state));
		printOut({ name: say`The papers of the week`, pages }, store.state);
		const names = chosen.map(({ name }) => name);
		done(store.state.workbook, say`Given to the printer: ${names.join(", ")}.`);
	};
	return {
		element: el(
			"div",
			{},
			el(
				"fieldset",
				{ class: "bench-boxes" },
				el("legend", {}, say`Papers`),
				...boxes.map(({ paper, box }) => el("label", { class: "bench-box" }, box, paper.name)),
			),
			reason,
			el("button", { type: "button", class: "main", onclick: print }, say`Print these papers`),
			" ",
			el(
				"button",
				{ type: "button", onclick: () => printLog(store.state) },
				say`Print a log for the bench`,
			),
		),
		paint() {},
	};
};
