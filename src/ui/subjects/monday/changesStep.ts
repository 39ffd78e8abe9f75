import { routine } from "../../../core/edit/monday/routine.ts";
import { keptPlans } from "../../../core/plan/record/keptPlans.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { stopProblems } from "../../../core/plan/today/stopProblems.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { type Measure, planMeasures } from "../../../core/sheets/planMeasures.ts";
import { weekTotalSheet } from "../../../core/sheets/weekTotal.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { DASH, shownCell } from "../../format/shownFigure.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";
import { problemList } from "../../sheet/problemList.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { weekHeadline } from "../week/weekHeadline.ts";
import { LOOKED_AT, type StepPart } from "./mondayStep.ts";

/** The new plan beside what was planned for the days before it, and what stops a safe round in it. */
export const changesStep: StepPart = ({ store, goTo }, { done }) => {
	const place = el("div", {
		class: "wide",
		tabindex: "0",
		role: "region",
		"aria-label": say`What the new plan changes`,
	});
	const look = el(
		"button",
		{ type: "button", onclick: () => done(store.state.workbook, "") },
		LOOKED_AT,
	);
	return {
		element: el("div", {}, place, look),
		paint(state) {
			const now = routine(state.workbook);
			look.hidden = !now?.hasMoved;
			fill(
				place,
				...(now?.hasMoved
					? changes(state, now.past, goTo)
					: [el("p", {}, say`Known when the plan has moved on.`)]),
			);
		},
	};
};

function changes(
	state: State,
	past: readonly IsoDate[],
	goTo: Parameters<typeof problemList>[1],
): Child[] {
	const stops = stopProblems(state.plan.problems);
	const { expected, set_aside: setAside } = weekTotalSheet.columns;
	return [
		el("p", {}, el("strong", {}, weekHeadline(state)), "."),
		paperTable(
			say`Last week and this one`,
			[
				{ label: say`Of` },
				{ label: say`Unit` },
				{ label: say`Average, days past`, numeric: true },
				{ label: say`Average, now`, numeric: true },
				{ label: say`Prepare for, now`, numeric: true },
			],
			[
				{
					rows: rowsOf(state.plan, weekTotalSheet).map((row) => {
						const measure = wordIn(row.measure_of) as Measure;
						return [
							shownWord(measure),
							planMeasures[measure].unit || shownWord(wordIn(row.unit)),
							before(state, past, measure),
							shownCell(expected, row.expected),
							shownCell(setAside, row.set_aside),
						];
					}),
				},
			],
		),
		stops.length > 0 && problemList(stops, goTo, say`What stops a safe round`),
	];
}

/** Expected over the days past, as the plans of those days had it; a dash where a day of them was not kept. */
function before(state: State, past: readonly IsoDate[], measure: Measure): string {
	const kept = keptPlans(readWorkbook(state.workbook).tables)(measure);
	let sum = 0;
	for (const day of past) {
		const expected = kept.get(day)?.value.expected ?? null;
		if (expected === null) return DASH;
		sum += expected;
	}
	return shownNumber(sum, planMeasures[measure].expected?.decimals ?? 1);
}
