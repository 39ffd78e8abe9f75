import { valueIn } from "../../../core/outcome.ts";
import { descalingOnRecord } from "../../../core/plan/rounds/descalingOnRecord.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { addDays } from "../../../core/values/date.ts";
import { counted } from "../../format/counted.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import { numberIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** How long ago the last descaling was, and when the next is expected, also beyond the plan; "" where none is ever due. */
export function descalingWords(state: State): string {
	const read = readWorkbook(state.workbook);
	const { settings } = read;
	const every = valueIn(settings.descale_every_rounds);
	const firstDay = valueIn(settings.plan_start);
	const days = rowsOf(state.plan, dayPlanSheet).map((row) => numberIn(row.rounds_expected) ?? 0);
	const perDay = days.reduce((sum, rounds) => sum + rounds, 0) / days.length;
	if (!every || firstDay === undefined || !(perDay > 0)) return "";
	const since = descalingOnRecord(read, firstDay, addDays(firstDay, days.length - 1));
	const countedTo = since.countedTo?.date ?? firstDay;
	const ago =
		since.lastOn === undefined
			? say`No descaling is written down; ${counted(since.rounds, "round")} since the record began.`
			: say`Last descaled on ${shownDayAndYear(since.lastOn)}, ${counted(since.rounds, "round")} ago.`;
	const rate = say`At this rate it falls due about every ${counted(Math.round(every / perDay), "day")}.`;
	const left = every - since.rounds;
	const next =
		left <= 1
			? say`The next one is due in the next round that runs.`
			: say`The next one comes about ${shownDayAndYear(addDays(countedTo, Math.floor((left - 0.5) / perDay)))}.`;
	return `${ago} ${next} ${rate}`;
}
