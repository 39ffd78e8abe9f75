import { calculation } from "../calculation.ts";
import { type Counts, once } from "../counts/counts.ts";
import { plus } from "../counts/sumOf.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

/** Kits to reprocess: never fewer than those used. */
export const usedAndExpiredCounts = calculation<{ used: Counts; expired: Counts }, Counts>({
	key: "used_and_expired_counts",
	label: say`Kits to reprocess: how likely each number is`,
	unit: say`kits`,
	formula: say`Kits used and kits gone out of date added up: every combination, with its chance.`,
	source: sources.thinning,
	inputs: {
		used: { label: say`Kits used: how likely each number is`, unit: say`kits` },
		expired: { label: say`Kits gone out of date: how likely each number is`, unit: say`kits` },
	},
	example: {
		inputs: { used: once(0.5), expired: once(0.5) },
		result: { first: 0, chance: Float64Array.of(0.25, 0.5, 0.25) },
		within: 1e-12,
	},
	compute: ({ used, expired }) => plus(used, expired),
});
