import type { Loads } from "../rounds/loads.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import type { Rates } from "./ratesOfItem.ts";

/** What the use of an item over some days goes by. */
export interface UseInputs {
	readonly rates: Rates;
	readonly days: readonly RoundsOfDay[];
	readonly loads: Loads;
	/** Rounds that run between descalings; 0: never. */
	readonly descaleEvery: number;
}

/** All that use over known days hangs on, as `memoize` asks for it. */
export function useHangsOn({ rates, loads, descaleEvery }: UseInputs): readonly number[] {
	return [
		descaleEvery,
		rates.perDay,
		rates.perRound,
		rates.perDescale,
		...loads.map(({ kits }) => kits),
		...rates.perLoad,
		...rates.perKit,
	];
}
