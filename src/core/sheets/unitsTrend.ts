import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";
import { monthSheet } from "./month.ts";
import { textColumn } from "./textColumn.ts";
import { unitColumns } from "./unitColumns.ts";

const LARGEST = 1e15;
const { measure, unit, planned_expected, planned_set_aside, done } = monthSheet.columns;

export const change = (help: string) =>
	computed({
		label: say`Change`,
		unit: say`see unit`,
		value: optional(number({ min: -LARGEST, max: LARGEST })),
		decimals: 1,
		mixed: true,
		signed: true,
		help,
	});

export const month = () =>
	textColumn({ label: say`Month`, help: say`Year and month, for example 2027-03.` });

export const unitsTrendSheet = sheet({
	file: "units-trend.csv",
	title: say`Each unit's months`,
	about: say`What each unit planned and did, month by month, as far as it is written down. What nobody wrote down has no row, and is never 0.`,
	columns: {
		...unitColumns(),
		month: month(),
		measure,
		measure_unit: unit,
		planned_expected,
		planned_set_aside,
		done,
		change: change(
			say`Done, less what was done in the month before; blank where that is not known.`,
		),
	},
});
