import { reachedBy } from "../counts/reachedBy.ts";
import { unroundedSteps } from "./commonStep.ts";
import type { PossibleUses } from "./possibleUses.ts";
import { likelyUses } from "./roundsLoadsAndKits.ts";
import { meansAtLevels, ratesInSteps } from "./stepsUsed.ts";
import { byNumbers, isFew } from "./usedByNumbers.ts";
import { nodesAddedUp } from "./usedOverDays.ts";
import type { UseInputs } from "./useInputs.ts";

/**
 * Use that goes by how many rounds run and what loads and kits they make, where these numbers are few: one amount for each.
 *
 * @returns nothing where kits, or the loads of methods, are not alike, or steps of use are fewer
 */
export function usesByNumbers(use: UseInputs): PossibleUses | undefined {
	const { rates, days, loads, descaleEvery } = use;
	if (days.some(({ kind }) => kind === "after_each_use")) return undefined;
	const nodes = nodesAddedUp(days);
	if (!nodes) return undefined;
	const exact = unroundedSteps(Object.values(rates).flat());
	const levels = meansAtLevels(days, nodes);
	const by = byNumbers(ratesInSteps(use, exact), levels, loads, descaleEvery);
	if (!by || by.numbers >= by.steps || !isFew(by.numbers, levels)) return undefined;
	const { uses, chance } = likelyUses(levels, by.kitsInLoad, by.most, by.useOf);
	const byTheDay = exact.of(rates.perDay * days.length);
	return {
		size: exact.size,
		enough: (confidence) => byTheDay + reachedBy(uses, chance, confidence),
		ways: () => ({ chance, places: uses.map((each) => byTheDay + each) }),
	};
}
