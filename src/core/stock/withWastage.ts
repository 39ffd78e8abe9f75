import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/**
 * What leaves the store so that some of it can be used.
 *
 * @param wastagePct share of what leaves the store that is spilt, torn or thrown away, 0 to 99 %
 * @example 90 used, 10 % wasted: 100 leave the store
 */
export function withWastage(use: number, wastagePct: number): number {
	return use / (1 - wastagePct / 100);
}

export const wastageInput = { label: say`Wastage`, unit: "%", min: 0, max: 99 };
const unit = say`in the item's measure`;

/** Mean use as stock is compared with it. */
export const useWithWastage = calculation<{ use: number; wastagePct: number }, number>({
	key: "use_with_wastage",
	label: say`Use, average, wastage included`,
	unit,
	formula: say`Average use ÷ (1 − wastage).`,
	source: sources.losses,
	inputs: {
		use: { label: say`Use, average`, unit, min: 0 },
		wastagePct: wastageInput,
	},
	example: { inputs: { use: 45, wastagePct: 10 }, result: 50, within: 1e-9 },
	compute: ({ use, wastagePct }) => withWastage(use, wastagePct),
});

/** The same day by day. */
export const dailyWithWastage = calculation<
	{ daily: readonly number[]; wastagePct: number },
	number[]
>({
	key: "daily_with_wastage",
	label: say`Use of each day, average, wastage included`,
	unit,
	formula: say`Average use of each day ÷ (1 − wastage).`,
	source: sources.losses,
	inputs: {
		daily: { label: say`Use of each day, average`, unit },
		wastagePct: wastageInput,
	},
	example: { inputs: { daily: [9, 0, 4.5], wastagePct: 10 }, result: [10, 0, 5], within: 1e-9 },
	compute: ({ daily, wastagePct }) => daily.map((use) => withWastage(use, wastagePct)),
});
