import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { RoundLength } from "../../rounds/roundLength.ts";
import { say } from "../../say.ts";
import type { RoundsRow } from "../../sheets/rounds.ts";
import { writeClock } from "../../values/clock.ts";
import type { CoverFigures } from "../kits/coverFigures.ts";
import { roundLengthOf } from "../kits/renewedOf.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { kitsPreparedFor } from "./kitsPreparedFor.ts";
import { lateRounds } from "./turnaroundMinutes.ts";

/**
 * A round holds no more kits than there are, so with few of them it ends in time. Whether it
 * still does once there are as many as are needed should be known before they are bought.
 */
export function fullOnceEnough(unit: UnitFigures, { cover, days }: PlanTables): Problem[] {
	const have = valueIn(unit.kitsInService) ?? 0;
	const enough = kitsOnceEnough(cover);
	// A round that is too long already is said so, with what would help.
	if (!cover.turnaround.outcome.ok || unit.afterEachUse || !(enough > have)) return [];
	const rounds = valueIn(unit.timetable.rounds) as GoodRow<RoundsRow>[];
	const kits = kitsPreparedFor(unit, days, enough);
	const late = lateRounds(rounds, valueIn(roundLengthOf(unit)) as RoundLength, kits);
	return late.flatMap(({ place, received, allowed }) => {
		const round = rounds.find(({ line }) => line === place?.line);
		if (!place || !round) return [];
		const at = writeClock(round.value.start);
		return [
			advice(place, {
				code: "round-full-once-enough",
				received,
				allowed,
				message: say`With the ${enough} kits that would be enough, the round at ${at} would not always end before the next one begins, and what does not fit would wait. Plan more people or another round before you buy kits.`,
			}),
		];
	});
}

/** Of each kind what is needed, or what there is where that is more; not a number where that is not known of one. */
function kitsOnceEnough({ kinds }: CoverFigures): number {
	return kinds.reduce((sum, { kitsInService, kitsNeeded }) => {
		const [have, need] = [valueIn(kitsInService), valueIn(kitsNeeded)];
		return sum + Math.max(have ?? Number.NaN, need ?? Number.NaN);
	}, 0);
}
