import type { TextTable, Workbook } from "../../src/core/workbook.ts";
import { smallUnit } from "../core/smallUnit.ts";

/** How much has been written down. */
export interface LongRecord {
	readonly uses: number;
	readonly rounds: number;
	readonly journal: number;
}

const HOUR = 3_600_000;
/** The day before the small unit's plan. */
const LAST = Date.UTC(2027, 1, 28);
const KITS = ["A", "B", "C"];

/** The small invented unit with a record of so many lines, three rounds a day back from its plan, and what was planned for each of those days. */
export function longRecord({ uses, rounds, journal }: LongRecord): Workbook {
	const days = Math.ceil(rounds / 3);
	const before = (count: number) => new Date(LAST - count * 24 * HOUR).toISOString().slice(0, 10);
	const dayOf = (row: number, of: number) => before(days - 1 - Math.floor((row * days) / of));
	const clock = (row: number) =>
		`${String(row % 24).padStart(2, "0")}:${row % 60 < 10 ? 0 : ""}${row % 60}`;
	const table = (header: string, count: number, row: (at: number) => string[]): TextTable => ({
		header: header.split(","),
		rows: Array.from({ length: count }, (_, at) => row(at)),
	});
	const { tables } = smallUnit();
	return {
		tables: {
			...tables,
			"uses.csv": table("at,kit,what,by,note", uses, (at) => [
				`${dayOf(at, uses)} ${clock(at)}`,
				KITS[at % 3] as string,
				"used",
				"",
				"",
			]),
			"rounds-done.csv": table("date,start,kits,litres,descaled", rounds, (at) => [
				dayOf(at, rounds),
				`${["07", "14", "21"][at % 3]}:00`,
				KITS.join(" "),
				"5.5",
				at % 7 === 6 ? "yes" : "no",
			]),
			"checks.csv": table("checked_at,kit,pieces_counted,clean", rounds, (at) => [
				`${dayOf(at, rounds)} ${["10", "17", "23"][at % 3]}:30`,
				KITS[at % 3] as string,
				"5",
				"yes",
			]),
			"journal.csv": table("day,item,lot,entry,quantity", journal, (at) => [
				dayOf(at, journal),
				"liquid",
				at % 2 ? "L1" : "L2",
				at % 9 === 0 ? "count" : at % 9 === 1 ? "receipt" : "issue",
				at % 9 < 2 ? "10" : "0.5",
			]),
			"records.csv": table("date,births,kits_used", days, (at) => [
				dayOf(at, days),
				String(4 + (at % 5)),
				"",
			]),
			"past-plans.csv": table("date,measure_of,expected,set_aside", 4 * days, (at) => [
				dayOf(at >> 2, days),
				["births", "kits_used", "rounds", "solution_litres"][at & 3] as string,
				"6",
				"10",
			]),
		},
	};
}
