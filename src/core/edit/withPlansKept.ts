import { textsOf } from "../read/textsOf.ts";
import { pastPlansSheet } from "../sheets/pastPlans.ts";
import type { PlannedDay } from "../sheets/plannedDay.ts";
import { date } from "../values/date.ts";
import { type Workbook, withTable } from "../workbook.ts";

/**
 * The workbook with what was planned for days now past written down.
 *
 * The plan that stood when a day was first left behind is the one the ward worked by, so
 * a day that has rows already keeps them as they are: nothing is written twice, and a plan
 * made afterwards does not take its place.
 */
export function withPlansKept(workbook: Workbook, planned: readonly PlannedDay[]): Workbook {
	const { header, rows, cell, row } = textsOf(workbook, pastPlansSheet);
	const kept = new Set(rows.map((texts) => dayIn(cell(texts, "date"))));
	const added = planned.filter((day) => !kept.has(day.date));
	if (added.length === 0) return workbook;
	const { expected, set_aside: setAside } = pastPlansSheet.columns;
	return withTable(workbook, pastPlansSheet.file, {
		header,
		rows: [
			...rows,
			...added.map((day) =>
				row(undefined, {
					date: day.date,
					measure_of: day.measure,
					expected: expected.value.write(day.expected ?? null),
					set_aside: setAside.value.write(day.setAside ?? null),
				}),
			),
		],
		...linesAfter(workbook, added.length),
	});
}

/** Lines of a file that was read are counted on; a table without any counts its rows. */
function linesAfter({ tables }: Workbook, added: number): { readonly lines?: readonly number[] } {
	const lines = tables[pastPlansSheet.file]?.lines;
	if (!lines) return {};
	const last = lines.at(-1) ?? 1;
	return { lines: [...lines, ...Array.from({ length: added }, (_, after) => last + 1 + after)] };
}

function dayIn(text: string): string {
	const read = date().schema.safeParse(text);
	return read.success ? read.data : text;
}
