import { memoize } from "../memoize.ts";
import { cappedUses } from "./cappedUses.ts";
import { added } from "./laterEnds.ts";
import { type ReadyLife, renewalSteps } from "./renewalSteps.ts";
import { type RenewalsOfDay, renewalsOfDay } from "./renewalsOfDay.ts";
import type { RoundOfPlan, RoundsGoneThrough } from "./roundsGoneThrough.ts";

const renewals = memoize(renewalsOfDay, (kits, day, life) => [
	kits,
	life.days,
	...renewalSteps(day, life).flatMap((step) => Object.values(step)),
]);

/** Renewals on the day that the days of the plan are like on average; none where kits keep for ever. */
export function renewalsOfPlan(kits: number, plan: RoundsGoneThrough): RenewalsOfDay | undefined {
	const { life } = plan.plan;
	return life === null ? undefined : renewals(kits, plan.likeDay(), life);
}

/** How likely each number of kits is to have come since the round before: used, and renewed. */
export function kitsThatCame(
	kits: number,
	round: RoundOfPlan,
	life: ReadyLife | null,
	renewed: RenewalsOfDay | undefined,
): Float64Array {
	if (!renewed || !life) return cappedUses(kits, round.came);
	if (life.renewal === "in_time")
		return both(usedAndRenewed(kits, round.came, renewed.given[round.index] as Float64Array));
	if (round.index > 0) return cappedUses(kits, round.came);
	const lapsed = usedAndLapsed(kits, round.cameBeforeMidnight, renewed);
	const came = added(both(lapsed), cappedUses(kits, round.came - round.cameBeforeMidnight));
	// Sums beyond the kits are cut off there; here they count as all kits.
	came[kits] = 1 - came.subarray(0, kits).reduce((sum, chance) => sum + chance, 0);
	return came;
}

/** Row u, of kits + 1 numbers: the chance of u used and 0, 1, … gone out of date at midnight. */
export function usedAndLapsed(
	kits: number,
	usesBeforeMidnight: number,
	renewed: RenewalsOfDay,
): Float64Array {
	return usedAndRenewed(kits, usesBeforeMidnight, renewed.given[0] as Float64Array);
}

function usedAndRenewed(kits: number, meanUses: number, given: Float64Array): Float64Array {
	const uses = cappedUses(kits, meanUses);
	return given.map((chance, i) => chance * (uses[Math.floor(i / (kits + 1))] as number));
}

/** Used and renewed together; never more than there are. */
function both(joint: Float64Array): Float64Array {
	const kits = Math.sqrt(joint.length) - 1;
	const sums = new Float64Array(kits + 1);
	joint.forEach((chance, i) => {
		const sum = Math.min(kits, Math.floor(i / (kits + 1)) + (i % (kits + 1)));
		sums[sum] = (sums[sum] as number) + chance;
	});
	return sums;
}
