import { calculation } from "../../calculation.ts";
import { GRAMS_PER_LITRE_PER_PCT, type Strength } from "../../chlorine/availableChlorine.ts";
import { asLabelled } from "../../chlorine/shownStrength.ts";
import { tooWeak } from "../../chlorine/tooWeak.ts";
import { say } from "../../say.ts";
import { sources } from "../../sources.ts";
import { cheapest, type Interval, orderInterval, type Pack } from "../../stock/orderInterval.ts";
import { DAYS_PER_QUARTER } from "../../values/date.ts";

/** Order intervals that are compared, in days. */
export const INTERVALS = [7, 14, 28, 56, DAYS_PER_QUARTER] as const;

interface Inputs {
	readonly litresPerDay: number;
	readonly targetPct: number;
	/** Strength on each day after a fresh delivery. */
	readonly strengths: readonly Strength[];
	readonly pack: Pack;
}

/** The order interval that costs least for the product that goes on fading in the store. */
export const bestInterval = calculation<Inputs, Interval>({
	key: "best_interval",
	label: say`Order interval that costs least`,
	unit: say`days`,
	formula: say`Ordered fresh every ${INTERVALS.join(", ")} days: each day takes litres × strength wanted ÷ that day's strength; whole packs; the interval whose packs cost least a day. An interval in which the product falls below the strength wanted is left out.`,
	source: sources.fading,
	rounding: say`Up to whole packs at each order.`,
	inputs: {
		litresPerDay: { label: say`Solution a day, average`, unit: say`L/day`, min: 0 },
		targetPct: { label: say`Strength of the soak`, unit: "%", min: 1e-6 },
		strengths: {
			label: say`Strength after each day in the store`,
			unit: say`g/L, g/g or g/tablet`,
		},
		pack: { label: say`Pack`, unit: "" },
	},
	example: {
		// 25 g of chlorine a day are 714.3 mL of 3.5 %, which does not fade here: 14, 28 and 56 days
		// take 1, 2 and 4 whole packs, the others pay for part of one they do not use up.
		inputs: {
			litresPerDay: 5,
			targetPct: 0.5,
			strengths: Array.from({ length: 91 }, () => ({ form: "liquid", gramsPerLitre: 35 })),
			pack: { size: 10_000, price: 8 },
		},
		result: { days: 56, quantity: 40_000, packs: 4, cost: 32, lostGrams: 0 },
		within: 1e-6,
	},
	compute: ({ litresPerDay, targetPct, strengths, pack }) => {
		const grams = litresPerDay * targetPct * GRAMS_PER_LITRE_PER_PCT;
		const after = (day: number) => strengths[day] as Strength;
		const lasting = INTERVALS.filter((days) => makes(after(days - 1), targetPct));
		if (lasting.length === 0) return tooWeak(asLabelled(after(INTERVALS[0] - 1)), targetPct);
		return cheapest(lasting.map((days) => orderInterval(days, grams, after, pack)));
	},
});

/** Whether a product of this strength can be mixed to the strength wanted; tablets always can. */
function makes(strength: Strength, targetPct: number): boolean {
	return strength.form === "tablet" || asLabelled(strength) >= targetPct;
}
