import { calculation } from "../calculation.ts";
import { always, type Counts } from "../counts/counts.ts";
import { poisson } from "../counts/poisson.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

interface Inputs {
	readonly mean: number;
	readonly kitsInService: number;
	readonly readyLifeDays: number;
	readonly days: number;
}

/** In time, a kit joins a round up to three days before its last day would end. */
const SOONEST = 3;

/** The most times one kit can be renewed unused on some days; without limit where kits keep only for a few. */
export function mostRenewals(days: number, readyLifeDays: number): number {
	return Math.ceil(days / Math.max(0, Math.floor(readyLifeDays) - SOONEST));
}

/** Kits that go out of date, or are renewed in time, on some days: Poisson, but never more than the kits there are can. */
export const expiredCounts = calculation<Inputs, Counts>({
	key: "kits_expired_counts",
	label: say`Kits gone out of date: how likely each number is`,
	unit: say`kits`,
	formula: say`Poisson counts with this mean, but at most the kits in service, each once in its ready life less ${SOONEST} days: whatever is beyond counts as that many.`,
	source: sources.perishable,
	inputs: {
		mean: { label: say`Kits gone out of date, average`, unit: say`kits`, min: 0 },
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		readyLifeDays: { label: say`Days a disinfected kit stays ready`, unit: say`days`, min: 0.01 },
		days: { label: say`Days`, unit: say`days`, min: 1 },
	},
	example: {
		// e^−0.5 = 0.606531, half of it for one; all that is left for two.
		inputs: { mean: 0.5, kitsInService: 2, readyLifeDays: 7, days: 1 },
		result: { first: 0, chance: Float64Array.of(0.606531, 0.303265, 0.090204) },
		within: 1e-6,
	},
	compute: ({ mean, kitsInService, readyLifeDays, days }) => {
		if (kitsInService === 0) return always(0);
		const { first, chance } = poisson(mean);
		const last = first + chance.length - 1;
		const most = Math.min(last, kitsInService * mostRenewals(days, readyLifeDays));
		const from = Math.min(first, most);
		const capped = new Float64Array(most - from + 1);
		chance.forEach((p, i) => {
			const at = Math.min(most, first + i) - from;
			capped[at] = (capped[at] as number) + p;
		});
		return { first: from, chance: capped };
	},
});
