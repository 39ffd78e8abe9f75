import { calculation } from "../calculation.ts";
import { type Loads, soaks } from "../rounds/loads.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { sumOfAll } from "../sumOfAll.ts";

/** What a quantity of a consumable is counted by. */
export const usageBases = [
	"day",
	"round",
	"load",
	"kit",
	"piece",
	"worker_round",
	"descale",
] as const;

/** One line of what an item is used for. */
export interface Usage {
	readonly basis: (typeof usageBases)[number];
	/** How much goes each time, in the item's measure. */
	readonly quantity: number;
}

/** How much of an item goes for one day, round that runs, load, kit and descaling. */
export interface Rates {
	readonly perDay: number;
	readonly perRound: number;
	/** For a load of each method, in the order of the loads. */
	readonly perLoad: readonly number[];
	/** For a kit of each kind, in the order of the kinds planned for. */
	readonly perKit: readonly number[];
	readonly perDescale: number;
}

interface Inputs {
	readonly usage: readonly Usage[];
	readonly workers: number;
	readonly piecesInKits: readonly number[];
	readonly loads: Loads;
}

/** Adds up an item's lines; pieces go by the kit, people by the round. */
export const ratesOfItem = calculation<Inputs, Rates>({
	key: "rates_of_item",
	label: say`Use by day, round, load, kit and descaling`,
	unit: say`in the item's measure`,
	formula: say`Lines of the same count added up; for a piece × pieces in a kit; for a person in a round × people in a round.`,
	source: definition,
	inputs: {
		usage: { label: say`What is used up`, unit: say`in the item's measure` },
		workers: { label: say`People in a round`, unit: say`people`, min: 1 },
		piecesInKits: { label: say`Pieces in a kit of each kind`, unit: say`pieces` },
		loads: { label: say`Kits in one load of each method`, unit: say`kits` },
	},
	example: {
		inputs: {
			usage: [
				{ basis: "worker_round", quantity: 2 },
				{ basis: "kit", quantity: 1 },
				{ basis: "piece", quantity: 3 },
			],
			workers: 2,
			piecesInKits: [5, 4],
			loads: soaks(3),
		},
		result: {
			perDay: 0,
			perRound: 2 * 2,
			perLoad: [0],
			perKit: [1 + 3 * 5, 1 + 3 * 4],
			perDescale: 0,
		},
		within: 0,
	},
	compute: ({ usage, workers, piecesInKits, loads }) => {
		const of = (basis: Usage["basis"]) =>
			sumOfAll(usage.flatMap((row) => (row.basis === basis ? [row.quantity] : [])));
		return {
			perDay: of("day"),
			perRound: of("round") + of("worker_round") * workers,
			perLoad: loads.map(() => of("load")),
			perKit: piecesInKits.map((pieces) => of("kit") + of("piece") * pieces),
			perDescale: of("descale"),
		};
	},
});
