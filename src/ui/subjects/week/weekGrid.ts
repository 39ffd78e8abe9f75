import type { Figure } from "../../../core/calculation.ts";
import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { birthsSheet } from "../../../core/sheets/births.ts";
import { type DayColumn, dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { weekPlanSheet } from "../../../core/sheets/weekPlan.ts";
import { weekTotalSheet } from "../../../core/sheets/weekTotal.ts";
import { DAYS_PER_WEEK } from "../../../core/values/date.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownCell } from "../../format/shownFigure.ts";
import { shownTyped } from "../../format/shownTyped.ts";
import type { GridCell, GridColumn, GridModel } from "../../grid/gridModel.ts";
import { isNarrowScreen } from "../../grid/isNarrowScreen.ts";
import { problemsAt } from "../../sheet/problemsAt.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { waysOf } from "../../state/waysOf.ts";
import { birthsOfDays } from "./birthsOfDays.ts";
import { type WeekRow, weekFigure } from "./weekFigure.ts";
import { type WeekMeasure, weekMeasures } from "./weekMeasures.ts";
import type { ShownWeek } from "./weeksOf.ts";

type DayRow = ComputedRow<typeof dayPlanSheet>;
type TotalRow = ComputedRow<typeof weekTotalSheet>;

const HEADER_PX = 46;
const ROW_PX = 46;
const MEASURE_PX = 184;
const NARROW_MEASURE_PX = 152;
/** Room for “prepare for 12” and for “moyenne 45,0”. */
const DAY_PX = 118;
const TOTAL_PX = 126;
/** A second line of a product's name, of small letters about so wide. */
const LINE_PX = 16;
const LETTER_PX = 7;
const SIDES_PX = 20;

/** A week of the plan with days across and measures down; at the right the week, where there are more, and the whole period. */
export function weekGrid(state: State, { at, days }: ShownWeek): GridModel {
	const all: readonly DayRow[] = rowsOf(state.plan, dayPlanSheet);
	const rows = all.slice(at * DAYS_PER_WEEK, at * DAYS_PER_WEEK + days.length);
	const totals = totalsOf(state);
	const isOneOfMany = all.length > days.length;
	const week = isOneOfMany ? rowsOf(state.plan, weekPlanSheet)[at] : undefined;
	const measures = measuresShown(state);
	const births = birthsOfDays(state);
	const problems = problemsAt(state.plan.found, birthsSheet.file);
	const dayColumns = days.map((date): GridColumn => {
		const [day = "", ...rest] = shownDay(date).split(" ");
		return { key: date, label: day, unit: rest.join(" "), numeric: true, width: DAY_PX };
	});
	const dayCell = (measure: WeekMeasure, day: number): GridCell => {
		const row = rows[day];
		if (!row) return { kind: "computed", text: "" };
		return {
			...figureCell("computed", row[measure.large], measure.large),
			...beneathOf(row, measure),
			figures: [row[measure.large], measure.small && row[measure.small.column]].filter(isThere),
		};
	};
	const birthsCell = (measure: WeekMeasure, day: number): GridCell => {
		const computed = dayCell(measure, day);
		const { text, line } = births(days[day] ?? "");
		const isOwn = text.trim() !== "";
		const wrong = line === null ? [] : problems(line, "births");
		const { label, unit, help, value } = birthsSheet.columns.births;
		return {
			...computed,
			kind: "typed",
			text: isOwn ? shownTyped(text, value) : computed.text,
			raw: text,
			own: isOwn,
			standIn: !isOwn,
			problems: wrong,
			entry: {
				label: `${label}, ${shownDay(days[day] ?? "")}`,
				unit,
				help,
				allowed: value.allowed,
				...(computed.waiting ? {} : { blank: say`${computed.text} (forecast or default)` }),
			},
		};
	};
	const totalCell = (measure: WeekMeasure): GridCell => {
		const total = totals.get(measure.total ?? "");
		if (!total) return { kind: "computed", text: "" };
		const [large, small] = measure.totalIsExpected
			? [total.expected, total.set_aside]
			: [total.set_aside, total.expected];
		const word = measure.totalIsExpected ? say`prepare for` : say`average`;
		return {
			...figureCell("computed", large, measure.large),
			...(small && measure.small
				? { beneath: `${word} ${figureText(small, measure.small.column)}` }
				: {}),
			...(large ? { text: figureText(large, measure.large) } : {}),
			figures: [large, small].filter(isThere),
		};
	};
	const measureWidth = isNarrowScreen() ? NARROW_MEASURE_PX : MEASURE_PX;
	return {
		name: isOneOfMany
			? say`The plan, week ${at + 1}: days across, measures down`
			: say`The plan: days across, measures down`,
		columns: [
			{
				key: "measure",
				label: say`Prepare for`,
				unit: say`and the average`,
				numeric: false,
				width: measureWidth,
			},
			...dayColumns,
			...(isOneOfMany ? [weekColumn(days.length)] : []),
			{
				key: "total",
				label: say`In all`,
				unit: counted(all.length, "day"),
				numeric: true,
				width: TOTAL_PX,
			},
		],
		rowCount: measures.length,
		headerHeight: HEADER_PX,
		rowHeight(row) {
			const measure = measures[row];
			const { beneath = "" } = measure ? labelCell(measure, rows[0], totals) : {};
			const isLong = beneath.length * LETTER_PX + SIDES_PX > measureWidth;
			return isLong ? ROW_PX + LINE_PX : ROW_PX;
		},
		endsGroup: (row) => measures[row]?.group !== measures[row + 1]?.group,
		cell(row, column) {
			const measure = measures[row];
			if (!measure) return { kind: "label", text: "" };
			if (column === 0) return labelCell(measure, rows[0], totals);
			if (isOneOfMany && column === days.length + 1) return weekCell(week, measure);
			if (column > days.length) return totalCell(measure);
			return row === 0 ? birthsCell(measure, column - 1) : dayCell(measure, column - 1);
		},
	};
}

function weekColumn(days: number): GridColumn {
	return {
		key: "week",
		label: say`The week`,
		unit: counted(days, "day"),
		numeric: true,
		width: TOTAL_PX,
	};
}

/** What the week brings as a whole; where days do not add up, nothing. */
function weekCell(week: WeekRow | undefined, measure: WeekMeasure): GridCell {
	const large = weekFigure(week, measure.large);
	const small = weekFigure(week, measure.small?.column);
	return {
		...figureCell("computed", large, measure.large),
		...(small && measure.small
			? { beneath: `${measure.small.word} ${figureText(small, measure.small.column)}` }
			: {}),
		figures: [large, small].filter(isThere),
	};
}

/** Without those that no piece's method takes any of. */
function measuresShown(state: State): readonly WeekMeasure[] {
	const { treated, isMixed } = waysOf(state);
	if (treated.size === 0) return weekMeasures;
	const rinsed = treated.has("chlorine");
	const boiled = rinsed || treated.has("boiling") || treated.has("steam");
	const isTaken = ({ total }: WeekMeasure) => {
		if (total === "solution_litres" || total === "chlorine") return isMixed;
		if (total === "boiled_buckets") return rinsed;
		return total !== "boiled_litres" || boiled;
	};
	return weekMeasures.filter(isTaken);
}

function labelCell(
	measure: WeekMeasure,
	first: DayRow | undefined,
	totals: ReadonlyMap<string, TotalRow>,
): GridCell {
	const product = wordIn(first?.chlorine_product);
	const name = measure.total === "chlorine" && product !== "" ? `${product}, ` : "";
	const ownUnit = wordIn(totals.get(measure.total ?? "")?.unit);
	const unit = measure.unit || shownWord(ownUnit);
	return { kind: "label", text: measure.label, beneath: measure.note ?? name + unit };
}

function totalsOf(state: State): Map<string, TotalRow> {
	const rows = rowsOf(state.plan, weekTotalSheet);
	return new Map(rows.map((row) => [wordIn(row.measure_of), row]));
}

function figureCell(
	kind: GridCell["kind"],
	figure: Figure<unknown> | undefined,
	column: DayColumn,
): GridCell {
	if (!figure) return { kind, text: "" };
	return { kind, text: figureText(figure, column), waiting: !figure.outcome.ok };
}

/** As the day's column writes it. */
function figureText(figure: Figure<unknown>, column: DayColumn): string {
	return shownCell(dayPlanSheet.columns[column], figure);
}

function beneathOf(row: DayRow, { small }: WeekMeasure): { beneath?: string } {
	const figure = small && row[small.column];
	if (!figure) return {};
	return { beneath: `${small.word} ${figureText(figure, small.column)}` };
}

function isThere<T>(value: T | undefined): value is T {
	return value !== undefined;
}
