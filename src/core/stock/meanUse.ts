import { mean } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poisson } from "../counts/poisson.ts";
import { memoizeByObject } from "../memoize.ts";
import { atLevel, nodesOfDay } from "../rounds/atLevel.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import type { UseInputs } from "./useInputs.ts";

/** Mean use of an item over some days. */
export function meanUse({ rates, days, kitsInLoad, descaleEvery }: UseInputs): number {
	let use = rates.perDay * days.length;
	for (const day of days) {
		const { kits, rounds, loads } = meansOfDay(day, kitsInLoad);
		kits.forEach((m, k) => {
			use += (rates.perKit[k] as number) * m;
		});
		use += rates.perRound * rounds + rates.perLoad * loads;
		if (descaleEvery > 0) use += (rates.perDescale * rounds) / descaleEvery;
	}
	return use;
}

/** Mean kits of each kind, rounds that run and loads of a day, which all items share. */
const meansOfDay = memoizeByObject((day: RoundsOfDay, kitsInLoad: number) => {
	const kits = day.byKind.map(() => 0);
	let rounds = 0;
	let loads = 0;
	for (const { factor, weight } of nodesOfDay(day)) {
		const known = atLevel(day, factor);
		const inRounds = known.kind === "in_rounds";
		known.byKind.forEach((ofKind, k) => {
			for (const m of ofKind) kits[k] = (kits[k] as number) + weight * m;
		});
		for (const m of known.kits) {
			rounds += weight * (inRounds ? -Math.expm1(-m) : m);
			loads += weight * (inRounds ? mean(groupsOf(poisson(m), kitsInLoad)) : m);
		}
	}
	return { kits, rounds, loads };
});
