import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { clockAfter } from "../../record/momentAt.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import { MINUTES_PER_HOUR } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import type { RoundAct } from "../today/act.ts";
import { minutesBetween } from "../today/minutesBetween.ts";
import { roundActs } from "../today/roundActs.ts";

/** People's hours that a day of the plan takes where every round of its run sheet runs. */
export interface HoursPlanned {
	/** With hands on, all people together. */
	readonly handsOn: number;
	/** From lighting each fire of the day's rounds until the last pot, or load of pieces, has been held. */
	readonly atFires: number;
}

/** @returns undefined where the rounds or the fires of the day wait for something */
export function hoursPlanned(
	plan: Plan,
	read: ReadWorkbook,
	day: IsoDate,
): HoursPlanned | undefined {
	const people = valueIn(read.settings.workers_per_round);
	const rounds = roundActs(plan, read).filter(({ at }) => at.date === day);
	const fires = rowsOf(plan, boilingSheet).filter((row) => valueIn(row.date) === day);
	if (people === undefined || rounds.length === 0) return undefined;
	let minutes = 0;
	for (const row of fires) {
		const [heat, hold, batches] = [
			valueIn(row.heat_minutes),
			valueIn(row.hold_minutes),
			valueIn(row.batches),
		];
		if (typeof heat !== "number" || typeof hold !== "number") return undefined;
		if (typeof batches !== "number") return undefined;
		minutes += heat + hold * batches;
	}
	const handsOn = rounds.reduce((sum, round) => sum + handsOnMinutes(round), 0);
	return { handsOn: (handsOn * people) / MINUTES_PER_HOUR, atFires: minutes / MINUTES_PER_HOUR };
}

function handsOnMinutes({ steps }: RoundAct): number {
	return steps
		.filter(({ isHandsOn }) => isHandsOn)
		.reduce((sum, { from, until }) => sum + minutesBetween(from, until), 0);
}

/** People's hours in the rounds that were done on some days, waiting included. */
export interface HoursDone {
	readonly hours: number;
	/** Rounds with an end written down; the others are not in the hours. */
	readonly timed: number;
	readonly rounds: number;
}

/** @returns undefined where nobody can read how many people a round has */
export function hoursDone(
	{ tables, settings }: ReadWorkbook,
	days: readonly IsoDate[],
): HoursDone | undefined {
	const all = new Set(days);
	const people = valueIn(settings.workers_per_round);
	if (people === undefined) return undefined;
	const rounds = tables.roundsDone.rows.filter(({ value }) => all.has(value.date));
	const minutes = rounds.flatMap(({ value: { start, ended } }) =>
		ended === null ? [] : [clockAfter(start, ended) - start],
	);
	const sum = minutes.reduce((one, other) => one + other, 0);
	return {
		hours: (sum * people) / MINUTES_PER_HOUR,
		timed: minutes.length,
		rounds: rounds.length,
	};
}
