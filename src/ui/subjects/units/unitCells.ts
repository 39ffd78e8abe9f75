import { nowhere } from "../../../core/problem.ts";
import { say } from "../../../core/say.ts";
import type { UnitState } from "../../../core/sheets/units.ts";
import { kitsShort, type UnitRow } from "../../../core/units/worstFirst.ts";
import { type Child, el } from "../../dom/el.ts";
import { problemWords } from "../../format/problemWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import { DASH } from "../../format/shownFigure.ts";
import { shownPlain, shownUp } from "../../format/shownNumber.ts";
import type { PaperColumn } from "../../print/paperTable.ts";

/** The rule by which the units are listed, as people read it over the list. */
export const worstFirstWords = say`Worst first: units that could not be read or planned; then those with fewer kits than they need, the most times without a ready kit first; then by the day on which the first item runs out, by late orders and by problems.`;

export const unitColumnsShown: readonly PaperColumn[] = [
	{ label: say`Unit` },
	{ label: say`State` },
	{ label: say`First day` },
	{ label: say`Kits needed`, numeric: true },
	{ label: say`Kits in service`, numeric: true },
	{ label: say`No kit ready when needed`, unit: say`per 1\u202f000 uses`, numeric: true },
	{ label: say`Runs out first` },
	{ label: say`Late orders`, numeric: true },
	{ label: say`Problems`, numeric: true },
	{ label: say`What to do first, or why it was not read` },
];

/** Each state in a sign and a word, so that nothing hangs on colour. */
const states: Readonly<Record<UnitState, readonly [sign: string, word: string]>> = {
	not_read: ["✕", say`not read`],
	not_planned: ["?", say`not planned`],
	look: ["!", say`look here`],
	in_order: ["✓", say`in order`],
};

/** What a unit's row says, cell by cell. @param usual the day on which most plans begin */
export function unitCells(row: UnitRow, usual: string | undefined): Child[] {
	const number = (value: number | null) => (value === null ? DASH : shownPlain(value));
	const short = kitsShort(row) ?? 0;
	const [sign, word] = states[row.state];
	const isOther = row.first_day !== null && usual !== undefined && row.first_day !== usual;
	return [
		el(
			"span",
			{},
			row.unit,
			row.path !== row.unit && el("span", { class: "paper-remark" }, row.path),
		),
		el(
			"span",
			{ class: `unit-state ${row.state}` },
			el("span", { "aria-hidden": "true" }, sign),
			` ${word}`,
		),
		el(
			"span",
			{ class: "unit-day" },
			row.first_day === null ? DASH : shownDay(row.first_day),
			isOther && el("strong", { class: "paper-remark" }, say`another week`),
		),
		number(row.kits_needed),
		el(
			"span",
			{},
			number(row.kits_in_service),
			short > 0 && el("strong", { class: "paper-remark" }, say`${short} lacking`),
		),
		row.unmet_per_1000_uses === null ? DASH : shownUp(row.unmet_per_1000_uses, 1),
		row.first_run_out === null
			? say`none`
			: el(
					"span",
					{ class: "unit-day" },
					shownDay(row.first_run_out),
					el("span", { class: "paper-remark" }, row.first_run_out_item),
				),
		number(row.orders_late),
		number(row.problems),
		el("span", { class: "unit-words" }, inWords(row)),
	];
}

/** What stands in files in codes, as pages tell it. */
function inWords({ in_words: message }: UnitRow): string {
	return problemWords({
		...nowhere,
		weight: "advice",
		code: "",
		received: "",
		allowed: "",
		message,
	});
}
