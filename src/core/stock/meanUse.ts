import { meanGroups } from "../counts/groupsOf.ts";
import { memoizeByObject } from "../memoize.ts";
import { atLevel, nodesOfDay } from "../rounds/atLevel.ts";
import { kitsOfLoad, type LoadSize, type Loads } from "../rounds/loads.ts";
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
	const isMade = day.kind === "in_rounds";
	for (const { factor, weight } of nodesOfDay(day)) {
		const known = atLevel(day, factor);
		known.byKind.forEach((ofKind, k) => {
			for (const m of ofKind) kits[k] = (kits[k] as number) + weight * m;
		});
		for (const m of known.kits) rounds += weight * (isMade ? -Math.expm1(-m) : m);
		loads.forEach((load, i) => {
			inLoads[i] = (inLoads[i] as number) + weight * loadsMade(load, known);
		});
	}
	return { kits, rounds, inLoads };
});

function loadsMade(load: LoadSize, day: RoundsOfDay): number {
	let made = 0;
	for (let round = 0; round < day.kits.length; round++) {
		const kits = load.ofKinds
			? kitsOfLoad(
					load,
					day.byKind.map((of) => of[round] as number),
				)
			: (day.kits[round] as number);
		made += day.kind === "in_rounds" ? meanGroups(kits, load.kits) : kits;
	}
	return made;
}
