import type { Amounts } from "../amounts.ts";
import type { UseInputs } from "./useInputs.ts";
import { usesByKits } from "./usesByKits.ts";
import { usesByNumbers } from "./usesByNumbers.ts";

/** What is set aside of use that comes to few amounts, however fine they are. */
export interface SetAsideExactly {
	readonly setAside: number;
	/** How likely each amount is that may come. */
	readonly amounts: () => Amounts;
}

/**
 * What to set aside where use goes by the number of kits alone, or by few numbers of rounds that run, loads and
 * kits: one amount for each, none of them rounded.
 *
 * @returns nothing where more has to be told apart
 */
export function setAsideExactly(use: UseInputs, confidence: number): SetAsideExactly | undefined {
	const uses = usesByKits(use) ?? usesByNumbers(use);
	return (
		uses && {
			setAside: uses.enough(confidence) * uses.size,
			amounts: () => ({ counts: { first: 0, ...uses.ways() }, size: uses.size }),
		}
	);
}
