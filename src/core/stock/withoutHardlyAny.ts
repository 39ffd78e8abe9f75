import { setAside } from "../counts/counts.ts";
import { kitsOver } from "../rounds/kitsOver.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { meanUse } from "./meanUse.ts";
import type { Rates } from "./ratesOfItem.ts";
import type { UseInputs } from "./useInputs.ts";

/** So little of all is not followed, but counted at the most that there hardly ever is. */
export const HARDLY_ANY = 0.001;
/** More than is enough for it comes in so small a part of the times in which what is set aside is not enough. */
const SELDOM = 0.01;

/** The use to follow, and what of it was taken by the day in place of what is hardly any. */
export interface Followed {
	readonly use: UseInputs;
	readonly byTheDay: number;
}

/**
 * Without what is hardly any of the use: so many kits, rounds, loads or descalings as hardly ever come are
 * counted by the day. An item that goes by the round, and by a drop for each kit, is then followed by its rounds alone.
 *
 * @returns nothing where all of it counts
 */
export function withoutHardlyAny(use: UseInputs, confidence: number): Followed | undefined {
	const { rates, days, descaleEvery } = use;
	const most = numbersOver(use, 1 - SELDOM * (1 - confidence));
	const parts: [keyof Rates, number][] = [
		["perRound", rates.perRound * most.rounds],
		// No load is without a kit.
		["perLoad", sumOfAll(rates.perLoad) * most.kits],
		["perKit", Math.max(0, ...rates.perKit) * most.kits],
		["perDescale", descaleEvery > 0 ? rates.perDescale * Math.ceil(most.rounds / descaleEvery) : 0],
	];
	let left = HARDLY_ANY * meanUse(use);
	let byTheDay = 0;
	let fewer: Rates = rates;
	for (const [part, amount] of parts.sort(([, one], [, other]) => one - other)) {
		if (amount === 0) continue;
		if (amount > left) break;
		left -= amount;
		byTheDay += amount;
		fewer = { ...fewer, ...without(rates, part) };
	}
	if (byTheDay === 0) return undefined;
	const perDay = rates.perDay + byTheDay / days.length;
	return { use: { ...use, rates: { ...fewer, perDay } }, byTheDay };
}

/** As many kits and rounds as hardly ever come. */
function numbersOver({ days }: UseInputs, confidence: number) {
	const kits = setAside(kitsOver(days), confidence);
	const planned = days.reduce(
		(sum, day) => sum + (day.kind === "in_rounds" ? day.kits.length : kits),
		0,
	);
	return { kits, rounds: Math.min(kits, planned) };
}

function without(rates: Rates, part: keyof Rates): Partial<Rates> {
	const rate = rates[part];
	return { [part]: typeof rate === "number" ? 0 : rate.map(() => 0) };
}
