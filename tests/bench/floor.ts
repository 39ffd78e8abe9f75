import { MEANS, MOST_LOADS, UNIT } from "./sheet.ts";

const totals = new Float64Array(MEANS.length);

/**
 * The same arithmetic with nothing around it: one loop over typed arrays, no object
 * made, nothing checked, nothing that could be asked "why?".
 */
export function floorTotals(births: Float64Array): Float64Array {
	const { usesPer100, kitsInService, readyLifeDays, descaleEvery } = UNIT;
	const { litres, strengthPct, stockPct, stepMl } = UNIT;
	const productMl = Math.ceil((litres * 1000 * strengthPct) / stockPct / stepMl) * stepMl;
	let [allBirths, allUses, allExpiries, rounds, loads, kits] = [0, 0, 0, 0, 0, 0];
	let yesterday = -1;
	for (let day = 0; day < births.length; day++) {
		const uses = ((births[day] as number) * usesPer100) / 100;
		const inLife = uses * readyLifeDays;
		let term = 1;
		let sum = 1;
		for (let k = kitsInService + 1; term > sum * Number.EPSILON; k++) {
			term *= inLife / k;
			sum += term;
		}
		const expiries = kitsInService / readyLifeDays / sum;
		const today = uses + expiries;
		const before = yesterday < 0 ? today : yesterday;
		yesterday = today;
		const first = (before * 3 + today * 7) / 24;
		const later = (today * 7) / 24;
		allBirths += births[day] as number;
		allUses += uses;
		allExpiries += expiries;
		kits += first + 2 * later;
		rounds -= Math.expm1(-first) + 2 * Math.expm1(-later);
		loads += loadsOf(first) + 2 * loadsOf(later);
	}
	const { buckets, bucketLitres, vinegarLitres, gauzePerKit, glovesPerRound } = UNIT;
	totals.set([allBirths, allUses, allExpiries, allUses + allExpiries, rounds, loads]);
	totals.set([rounds * litres, rounds * productMl, loads * buckets], 6);
	totals.set([loads * buckets * bucketLitres, (rounds / descaleEvery) * vinegarLitres], 9);
	totals.set([kits * gauzePerKit, rounds * glovesPerRound], 11);
	return totals;
}

/** Mean loads of a round: the chances that no load, one load, … are not enough. */
function loadsOf(mean: number): number {
	let chance = Math.exp(-mean);
	let atMost = chance;
	let loads = 1 - chance;
	for (let k = 1; k <= (MOST_LOADS - 1) * UNIT.kitsInLoad; k++) {
		chance *= mean / k;
		atMost += chance;
		if (k % UNIT.kitsInLoad === 0) loads += 1 - atMost;
	}
	return loads;
}
