import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { isServed } from "../../../core/plan/store/servedRounds.ts";
import { minutesBetween } from "../../../core/plan/today/minutesBetween.ts";
import { mixActs } from "../../../core/plan/today/mixActs.ts";
import { roundActs } from "../../../core/plan/today/roundActs.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { type ReadWorkbook, readWorkbook } from "../../../core/read/readWorkbook.ts";
import { countsAt } from "../../../core/record/countsAt.ts";
import { inTime } from "../../../core/record/kitState.ts";
import { DESCALE_STEP } from "../../../core/rounds/timedSteps.ts";
import { say } from "../../../core/say.ts";
import { mixingDaysSheet } from "../../../core/sheets/mixingDays.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import { roundsDoneSheet } from "../../../core/sheets/roundsDone.ts";
import { stockSheet } from "../../../core/sheets/stock.ts";
import { MINUTES_PER_HOUR, writeClock } from "../../../core/values/clock.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { nameOfProductInUse } from "../mixing/mix.ts";

/** A round that began longer ago is not the one that has just ended. */
const JUST_DONE_MINUTES = 6 * MINUTES_PER_HOUR;

/** What the plan and the store know of the round that has just been done. */
export interface KnownOfRound {
	readonly start: LocalTime;
	/** By now, or when the plan has it over where that is past: later would let its kits keep longer. "" where it is not known. */
	readonly ended: string;
	/** Kits that were used or opened after it began: they were not in it. */
	readonly usedSince: ReadonlySet<string>;
	readonly product: string;
	/** Lots of the product, the one that the plan measures out from first; "" is none of them. */
	readonly lots: readonly (readonly [value: string, words: string])[];
	/** "" where none is mixed, or one made for an earlier round of the day serves this one. */
	readonly litres: string;
	readonly descalingDue: boolean;
}

/** The latest round of the plan that had begun by a moment and is not written down yet; else it began then. */
export function knownOfRound(state: State, at: LocalTime): KnownOfRound {
	const read = readWorkbook(state.workbook);
	const done = readTable(roundsDoneSheet, state.workbook.tables[roundsDoneSheet.file]).rows;
	const rounds = roundActs(state.plan, read);
	const last = rounds.findLast(
		(round) =>
			inTime(round.at, at) <= 0 &&
			minutesBetween(round.at, at) <= JUST_DONE_MINUTES &&
			!done.some(({ value }) => value.date === round.at.date && value.start === round.at.minutes),
	);
	const mix = mixActs(state.plan, read.settings, last ? [last] : [])[0];
	const product = nameOfProductInUse(state);
	const ofDay = rowsOf(state.plan, mixingDaysSheet).find((row) => wordIn(row.date) === at.date);
	const first = mix?.lot ?? wordIn(ofDay?.lot);
	const lots = rowsOf(state.plan, stockSheet)
		.filter((row) => wordIn(row.item) === product && (numberIn(row.on_hand) ?? 0) > 0)
		.map((row) => wordIn(row.lot));
	const ordered = [...new Set([first, ...lots].filter(Boolean))];
	const start = last?.at ?? at;
	return {
		start,
		ended: last ? writeClock((inTime(last.until, at) < 0 ? last.until : at).minutes) : "",
		usedSince: usedAfter(read.tables.uses, start),
		product,
		lots: [
			...ordered.map((lot) => [lot, say`${product}, lot ${lot}`] as const),
			["", say`another, or none`],
		],
		litres:
			mix && !isServed(read, start)
				? preparationColumns.litres.value.write(Number(mix.litres.toFixed(2)))
				: "",
		descalingDue: last?.steps.some(({ step }) => step === DESCALE_STEP) ?? false,
	};
}

function usedAfter({ rows }: ReadWorkbook["tables"]["uses"], start: LocalTime): Set<string> {
	const after = rows.filter(({ value }) => inTime(countsAt(value.at, false), start) > 0);
	return new Set(after.map(({ value }) => value.kit));
}
