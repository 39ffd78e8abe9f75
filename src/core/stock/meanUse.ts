import { mean } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poisson } from "../counts/poisson.ts";
import { memoizeByObject } from "../memoize.ts";
import { atLevel, nodesOfDay } from "../rounds/atLevel.ts";
import { kitsOfLoad, type Loads } from "../rounds/loads.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { UseInputs } from "./useInputs.ts";

/** Mean use of an item over some days. */
export function meanUse({ rates, days, loads, descaleEvery }: UseInputs): number {
	let use = rates.perDay * days.length;
	for (const day of days) {
		const { kits, rounds, inLoads } = meansOfDay(day, loads);
		use += sumOfAll(kits.map((ofKind, k) => (rates.perKit[k] as number) * ofKind));
		for (let i = 0; i < inLoads.length; i++)
			use += (rates.perLoad[i] as number) * (inLoads[i] as number);
		use += rates.perRound * rounds;
		if (descaleEvery > 0) use += (rates.perDescale * rounds) / descaleEvery;
	}
	return use;
}

/** Mean kits of each kind, rounds that run and loads of each method of a day, which all items share. */
const meansOfDay = memoizeByObject((day: RoundsOfDay, loads: Loads) => {
	const kits = day.byKind.map(() => 0);
	const inLoads = loads.map(() => 0);
	let rounds = 0;
	for (const { factor, weight } of nodesOfDay(day)) {
		const known = atLevel(day, factor);
		const inRounds = known.kind === "in_rounds";
		known.byKind.forEach((ofKind, k) => {
			for (const m of ofKind) kits[k] = (kits[k] as number) + weight * m;
		});
		known.kits.forEach((m, round) => {
			rounds += weight * (inRounds ? -Math.expm1(-m) : m);
			const byKind = known.byKind.map((of) => of[round] as number);
			loads.forEach((load, i) => {
				const by = load.ofKinds ? kitsOfLoad(load, byKind) : m;
				const made = inRounds ? mean(groupsOf(poisson(by), load.kits)) : by;
				inLoads[i] = (inLoads[i] as number) + weight * made;
			});
		});
	}
	return { kits, rounds, inLoads };
});
