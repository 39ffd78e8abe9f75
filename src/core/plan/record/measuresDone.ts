import { type Figure, typedFigure } from "../../calculation.ts";
import { checkResult } from "../../kits/checkResult.ts";
import { givenFigure } from "../../read/cellFigure.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import type { Sheet } from "../../sheet.ts";
import { checksSheet } from "../../sheets/checks.ts";
import type { MonthMeasure } from "../../sheets/month.ts";
import { recordsSheet } from "../../sheets/records.ts";
import { roundsDoneSheet } from "../../sheets/roundsDone.ts";
import { usesSheet } from "../../sheets/uses.ts";
import type { IsoDate } from "../../values/date.ts";
import { piecesToCheck } from "../kits/piecesOfKinds.ts";
import { kitsUsedByDay } from "./kitsUsedByDay.ts";
import { type DayPart, type Recorded, recorded } from "./recorded.ts";

/** One thing that a row of the record says happened. */
const one = (label: string, { file }: Sheet, line: number): Figure =>
	typedFigure(label, "", 1, { file, line, column: "" });

/** What the record says of each measure of the report, over some days. */
export function measuresDone(
	read: ReadWorkbook,
	days: readonly IsoDate[],
): Record<MonthMeasure, Recorded> {
	const { records, uses, roundsDone, checks, kits, kinds } = read.tables;
	const used = kitsUsedByDay(read.tables);
	const needs = uses.rows
		.filter(({ value }) => value.what === "none_ready")
		.map(
			({ line, value }): DayPart => ({
				day: value.at.date,
				name: String(line),
				figure: one(say`A time no kit was ready when needed`, usesSheet, line),
			}),
		);
	const kindOf = new Map(kits.rows.map(({ value }) => [value.kit, value.kind]));
	const listed = piecesToCheck(kinds);
	const checked = checks.rows.flatMap(({ line, value }) => {
		const found = checkResult(value, listed(kindOf.get(value.kit) ?? ""))?.found;
		return found === undefined ? [] : [{ day: value.checked_at.date, line, found }];
	});
	const rounds = roundsDone.rows.map(({ line, value }) => ({ day: value.date, line, value }));
	const roundDays = rounds.map(({ day }) => day);
	return {
		births: recorded(
			say`Births`,
			say`births`,
			days,
			records.rows.flatMap((row): DayPart[] => {
				const figure = givenFigure(recordsSheet, row, "births");
				return figure ? [{ day: row.value.date, name: row.value.date, figure }] : [];
			}),
		),
		kits_used: recorded(say`Kits used`, say`kits`, days, [...used.values()].flat(), used.keys()),
		needs_none_ready: recorded(
			say`Times no kit was ready when needed`,
			say`times`,
			days,
			needs,
			usesDays(read),
		),
		rounds: recorded(
			say`Rounds done`,
			say`rounds`,
			days,
			rounds.map(({ day, line }) => ({
				day,
				name: String(line),
				figure: one(say`A round`, roundsDoneSheet, line),
			})),
		),
		kits_failed: recorded(
			say`Kits that failed their check`,
			say`kits`,
			days,
			checked
				.filter(({ found }) => found !== "passed")
				.map(({ day, line }) => ({
					day,
					name: String(line),
					figure: one(say`A kit that failed`, checksSheet, line),
				})),
			checked.map(({ day }) => day),
		),
		descalings: recorded(
			say`Descalings`,
			say`descalings`,
			days,
			rounds
				.filter(({ value }) => value.descaled === "yes")
				.map(({ day, line }) => ({
					day,
					name: String(line),
					figure: one(say`A descaling`, roundsDoneSheet, line),
				})),
			roundDays,
		),
		solution_litres: recorded(
			say`Solution made`,
			"L",
			days,
			roundsDone.rows.flatMap((row): DayPart[] => {
				const figure = givenFigure(roundsDoneSheet, row, "litres");
				return figure ? [{ day: row.value.date, name: String(row.line), figure }] : [];
			}),
		),
		boiled_litres: recorded(say`Boiled water`, "L", days, []),
	};
}

/** Days on which anything was written down of the kits' uses. */
function usesDays({ tables }: ReadWorkbook): IsoDate[] {
	return tables.uses.rows.map(({ value }) => value.at.date);
}
