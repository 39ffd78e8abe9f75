import { poissonTerms } from "../counts/poisson.ts";
import { memoize } from "../memoize.ts";
import { cappedUses } from "./cappedUses.ts";
import { added } from "./laterEnds.ts";
import { renewalSteps } from "./renewalSteps.ts";
import { type RenewalsOfDay, renewalsOfDay } from "./renewalsOfDay.ts";
import { type RenewedGiven, usedAndRenewed } from "./renewedGiven.ts";
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

/**
 * How likely each number of kits is to have come since the round before, as far as any comes: used, and renewed.
 *
 * @param plan whose rounds these are
 */
export function kitsThatCame(
	kits: number,
	round: RoundOfPlan,
	plan: RoundsGoneThrough,
	renewed: RenewalsOfDay | undefined,
): Float64Array {
	const counts = plan.usedBefore(round);
	const { life } = plan.plan;
	const isUses = !renewed || !life || (life.renewal === "when_expired" && round.index > 0);
	if (isUses && counts.first === 0 && counts.chance.length <= kits + 1) return counts.chance;
	const used = cappedUses(kits, counts);
	if (isUses) return used;
	if (life.renewal === "in_time")
		return usedAndRenewed(used, renewed.given[round.index] as RenewedGiven);
	const { came, cameBeforeMidnight } = round;
	const before = cappedUses(kits, poissonTerms(cameBeforeMidnight));
	const after = cappedUses(kits, poissonTerms(came - cameBeforeMidnight));
	const all = added(usedAndRenewed(before, renewed.given[0] as RenewedGiven), after);
	// Sums beyond the kits are cut off there; here they count as all kits.
	all[kits] = 1 - all.subarray(0, kits).reduce((sum, chance) => sum + chance, 0);
	return all;
}
