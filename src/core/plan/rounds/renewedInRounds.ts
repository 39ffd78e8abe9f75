import { kitsToRenew } from "../../kits/kitsToRenew.ts";
import { valueIn } from "../../outcome.ts";
import { minutesOf } from "../../rounds/roundLength.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../../values/clock.ts";
import { dayNumber, type IsoDate } from "../../values/date.ts";
import { readyLifeOf, roundLengthOf } from "../kits/renewedOf.ts";
import { isSentAway } from "../methods/readyLifeDaysOf.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { RoundPlan } from "./roundPlans.ts";

/**
 * For each round of the plan the kits it renews although nobody used them, if none is used
 * until then; by what the register says of the kits that are ready on the first day.
 */
export function renewedInRounds(unit: UnitFigures, rounds: readonly RoundPlan[]): string[][] {
	const life = valueIn(readyLifeOf(unit, unit));
	const length = valueIn(roundLengthOf(unit));
	const [first] = rounds;
	if (!life || !length || !first) return [];
	const firstDay = dayNumber(first.date) as number;
	const perDay = rounds.filter(({ date }) => date === first.date).length;
	const away = minutesAway(unit);
	const clocked = rounds.map(({ date, round, steps }) => {
		const midnight = ((dayNumber(date) as number) - firstDay) * MINUTES_PER_DAY;
		const start = midnight + round.value.start;
		const ends = valueIn(steps)?.at(-1)?.endsAt;
		const ended = ends === undefined ? start + minutesOf(length, 1) : midnight + ends;
		return { start, ready: Math.max(ended, start + away) };
	});
	// The day after the plan is like its last.
	const last = clocked.at(-perDay) as { start: number; ready: number };
	const next = { start: last.start + MINUTES_PER_DAY, ready: last.ready + MINUTES_PER_DAY };
	const kits = unit.readiness.flatMap(({ kit, state, readySince }) =>
		state === "ready"
			? [
					{
						kit: kit.value.kit,
						readyOn: (dayNumber(readySince as IsoDate) as number) - firstDay,
					},
				]
			: [],
	);
	return kitsToRenew(kits, [...clocked, next], life);
}

/** How long after a round's start kits are back, where it sends any away. */
function minutesAway({ kinds, read }: UnitFigures): number {
	const sent = kinds.some(({ treated }) => treated.outcome.ok && isSentAway(treated.outcome.value));
	return sent ? (valueIn(read.settings.autoclave_turnaround_hours) ?? 0) * MINUTES_PER_HOUR : 0;
}
