import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { weekPlanSheet } from "../../../core/sheets/weekPlan.ts";
import { el } from "../../dom/el.ts";
import { pictureFigure } from "../../dom/pictureFigure.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownCell } from "../../format/shownFigure.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { type WeekRow, weekFigure } from "./weekFigure.ts";
import { type WeekMeasure, weekMeasures } from "./weekMeasures.ts";
import type { WeekPoint } from "./weeksPicture.ts";

const PICTURE_PX = 270;

/** A small picture for each measure of a plan of several weeks: what to set aside, week by week. */
export function weeksView(state: State): HTMLElement | undefined {
	const rows: readonly WeekRow[] = rowsOf(state.plan, weekPlanSheet);
	if (rows.length < 2) return undefined;
	const figures = weekMeasures.flatMap((measure) => figureOf(rows, measure) ?? []);
	if (figures.length === 0) return undefined;
	return el(
		"section",
		{ class: "weeks-pictures", "aria-label": say`Each measure, week by week` },
		el(
			"p",
			{ class: "in-words" },
			say`A bar is what to prepare for in a week, the stroke in it the average; the highest week carries its number.`,
		),
		...figures,
	);
}

function figureOf(rows: readonly WeekRow[], measure: WeekMeasure): HTMLElement | undefined {
	const [setAside, expected] = measure.totalIsExpected
		? [measure.small?.column, measure.large]
		: [measure.large, measure.small?.column];
	const points = rows.flatMap((row): WeekPoint[] => {
		const most = numberIn(weekFigure(row, setAside));
		if (most === undefined) return [];
		const mean = numberIn(weekFigure(row, expected));
		return [{ from: wordIn(row.from), to: wordIn(row.to), setAside: most, expected: mean }];
	});
	if (points.length < rows.length) return undefined;
	const most = points.reduce((high, point) => (point.setAside > high.setAside ? point : high));
	const row = rows[points.indexOf(most)];
	const figure = weekFigure(row, setAside);
	if (!setAside || !figure) return undefined;
	const amount = shownCell(dayPlanSheet.columns[setAside], figure);
	const unit = measure.unit || shownWord(wordIn(row?.product_unit));
	const words = say`${measure.label}: most in the week from ${shownDay(most.from)}, ${amount} ${unit}.`;
	return pictureFigure(({ weeksPicture }) => weeksPicture(points, PICTURE_PX), words, words);
}
