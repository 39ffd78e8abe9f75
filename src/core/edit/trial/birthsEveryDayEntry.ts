import { valueIn } from "../../outcome.ts";
import { readSettings } from "../../read/readSettings.ts";
import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { birthsSheet } from "../../sheets/births.ts";
import { unitSheet } from "../../sheets/unit.ts";
import { addDays, date, type IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import type { BeginEntry } from "../begin/beginEntry.ts";
import { wrongFor } from "../notAllowed.ts";
import { withTexts } from "../withTexts.ts";

const LABEL = say`Births expected on every day of the plan`;
const { value, unit } = birthsSheet.columns.births;

/** One figure of the unit's own for every day of the plan, in place of what the register or the settings say. */
export const birthsEveryDayEntry: BeginEntry = {
	key: "births-every-day",
	label: LABEL,
	help: say`Stands for each day of the plan in the sheet “${birthsSheet.title}”. Blank: each day as the workbook has it.`,
	unit: () => unit,
	allowed: () => value.allowed,
	read(workbook) {
		const texts = textsOf(workbook, birthsSheet);
		const typed = daysOf(workbook).map((day) => {
			const row = texts.rows[rowOf(workbook, day)];
			return row ? texts.cell(row, "births").trim() : "";
		});
		return typed.every((text) => text === typed[0]) ? (typed[0] ?? "") : "";
	},
	write(workbook, text) {
		const wrong = wrongFor({ label: LABEL, value }, text);
		if (wrong !== undefined) return wrong;
		let next = textsOf(workbook, birthsSheet).rows.length;
		const cells = daysOf(workbook).flatMap((day) => {
			const found = rowOf(workbook, day);
			const row = found < 0 ? next++ : found;
			return [
				...(found < 0 ? [{ row, column: "date", text: day }] : []),
				{ row, column: "births", text: text.trim() },
			];
		});
		return withTexts(workbook, birthsSheet.file, cells);
	},
};

function daysOf(workbook: Workbook): IsoDate[] {
	const { plan_start, plan_days } = readSettings(workbook.tables[unitSheet.file]).settings;
	const start = valueIn(plan_start);
	if (start === undefined) return [];
	return Array.from({ length: valueIn(plan_days) ?? 0 }, (_, at) => addDays(start, at));
}

/** @returns -1 where the day has no row */
function rowOf(workbook: Workbook, day: IsoDate): number {
	const texts = textsOf(workbook, birthsSheet);
	return texts.rows.findIndex((row) => {
		const read = date().schema.safeParse(texts.cell(row, "date"));
		return read.success && read.data === day;
	});
}
