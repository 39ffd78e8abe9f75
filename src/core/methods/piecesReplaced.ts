import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import type { Rates } from "../stock/ratesOfItem.ts";
import type { MethodsOfKits } from "./methodsOfKits.ts";

interface Inputs {
	readonly item: string;
	/** Of each kind planned for. */
	readonly kinds: readonly MethodsOfKits[];
}

/** Pieces of one name that are thrown away with each kit used: as many as the kit has, of a kind with several sorts of kit the most. */
export const piecesReplaced = calculation<Inputs, Rates>({
	key: "pieces_replaced",
	label: say`New pieces for a kit used`,
	unit: say`in the item's measure`,
	formula: say`A piece for single use that has the item's name: as many as belong to a kit, for each kit used on a baby.`,
	source: definition,
	inputs: {
		item: { label: say`Item`, unit: "" },
		kinds: { label: say`How the pieces are treated`, unit: "" },
	},
	example: {
		inputs: {
			item: "bulb",
			kinds: [
				{
					methods: ["chlorine", "single_use"],
					pieces: [
						{ kind: "K", piece: "bag", count: 1, method: "chlorine" },
						{ kind: "K", piece: "bulb", count: 2, method: "single_use" },
					],
				},
			],
		},
		result: { perDay: 0, perRound: 0, perLoad: [], perKit: [2], perDescale: 0 },
		within: 0,
	},
	compute: ({ item, kinds }) => ({
		perDay: 0,
		perRound: 0,
		perLoad: [],
		perKit: kinds.map(({ pieces }) =>
			pieces.reduce(
				(most, { piece, count, method }) =>
					piece === item && method === "single_use" ? Math.max(most, count) : most,
				0,
			),
		),
		perDescale: 0,
	}),
});
