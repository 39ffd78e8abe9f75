import { calculation, derive, type Figure } from "../../calculation.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import type { Rates } from "../../stock/ratesOfItem.ts";

/** Water and fuel that loads boiled beforehand take are as many as those loads, not as the loads that come. */
const boiledBeforehand = calculation<{ rates: Rates; loads: number }, Rates>({
	key: "water_boiled_beforehand",
	label: say`Water by day, round and descaling, loads boiled beforehand`,
	unit: "L",
	formula: say`Of a day: + loads of water boiled × water for a load; of a load then nothing more.`,
	source: definition,
	inputs: {
		rates: { label: say`Water by day, round, load and descaling`, unit: "L" },
		loads: { label: say`Loads of water boiled`, unit: say`loads`, min: 0 },
	},
	example: {
		inputs: {
			rates: { perDay: 8, perRound: 15.5, perLoad: [30, 6], perKit: [0], perDescale: 5 },
			loads: 3,
		},
		result: { perDay: 98, perRound: 15.5, perLoad: [0, 6], perKit: [0], perDescale: 5 },
		within: 0,
	},
	compute: ({ rates, loads }) => ({
		...rates,
		perDay: rates.perDay + loads * (rates.perLoad[0] as number),
		// The soak comes first of the methods.
		perLoad: rates.perLoad.map((use, i) => (i === 0 ? 0 : use)),
	}),
});

/** Solution made once a day is as much as is mixed of it: none on a day without a round, more where it grows too old. */
const madeOnceADay = calculation<{ rates: Rates; preparations: number; litres: number }, Rates>({
	key: "water_with_day_solution",
	label: say`Water by day, round, load and descaling, with the day's solution`,
	unit: "L",
	formula: say`Of a day: + preparations × litres of a preparation.`,
	source: sources.solutionLife,
	inputs: {
		rates: { label: say`Water by day, round, load and descaling`, unit: "L" },
		preparations: { label: say`Preparations`, unit: say`preparations`, min: 0 },
		litres: { label: say`Litres of a preparation`, unit: "L", min: 0 },
	},
	example: {
		inputs: {
			rates: { perDay: 8, perRound: 10, perLoad: [30], perKit: [0], perDescale: 5 },
			preparations: 2,
			litres: 5.5,
		},
		result: { perDay: 19, perRound: 10, perLoad: [30], perKit: [0], perDescale: 5 },
		within: 0,
	},
	compute: ({ rates, preparations, litres }) => ({
		...rates,
		perDay: rates.perDay + preparations * litres,
	}),
});

interface MadeOnDay {
	/** Loads of water boiled beforehand; undefined where each load that comes is boiled. */
	readonly loads: Figure | undefined;
	/** Solution of the day; undefined where each round has its own. */
	readonly solution: { readonly preparations: Figure; readonly litres: Figure } | undefined;
}

/** Water by day, round, load and descaling, with what is made on a day however many rounds and loads come. */
export function ratesOfDay(rates: Figure<Rates>, { loads, solution }: MadeOnDay): Figure<Rates> {
	const mixed = solution ? derive(madeOnceADay, { rates, ...solution }) : rates;
	return loads ? derive(boiledBeforehand, { rates: mixed, loads }) : mixed;
}
