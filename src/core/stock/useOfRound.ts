import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { type Rates, ratesOfItem } from "./ratesOfItem.ts";

interface Inputs {
	readonly rates: Rates;
	readonly kits: number;
	readonly loads: number;
	readonly descalings: number;
}

/** What one round uses when its kits are known. */
export const useOfRound = calculation<Inputs, number>({
	key: "use_of_round",
	label: say`Use of one round`,
	unit: say`in the item's measure`,
	formula: say`For a round + for a load × loads + for a kit × kits + for a descaling × descalings. Where kinds of kit differ, for the kit that takes most; what goes by the day is not part of it.`,
	source: definition,
	inputs: {
		rates: { label: ratesOfItem.label, unit: ratesOfItem.unit },
		kits: { label: say`Kits in the round`, unit: say`kits`, min: 0 },
		loads: { label: say`Loads of the round`, unit: say`loads`, min: 0 },
		descalings: { label: say`Descalings in the round`, unit: "", min: 0 },
	},
	example: {
		inputs: {
			rates: { perDay: 9, perRound: 2, perLoad: [1], perKit: [6, 4], perDescale: 3 },
			kits: 2,
			loads: 1,
			descalings: 0,
		},
		result: 2 + 1 * 1 + 6 * 2,
		within: 0,
	},
	compute: ({ rates, kits, loads, descalings }) =>
		rates.perRound +
		// The same for a load of each method.
		(rates.perLoad[0] ?? 0) * loads +
		Math.max(0, ...rates.perKit) * kits +
		rates.perDescale * descalings,
});
