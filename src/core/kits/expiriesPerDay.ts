import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

interface Inputs {
	readonly kitsInService: number;
	readonly usesPerDay: number;
	readonly readyLifeDays: number;
}

/**
 * Ready kits that go out of date, per day (outdating of a perishable base stock).
 *
 * Oldest used first, S kits, uses Poisson at rate λ, life L: f(L)/F(L) of a Gamma
 * with shape S and rate λ. Written as (S/L) ÷ (1 + x/(S+1) + x²/((S+1)(S+2)) + …)
 * with x = λL, which needs no gamma function, is exact as λ goes to 0 (S/L), and
 * falls to 0 where uses are many.
 */
export const expiriesPerDay = calculation<Inputs, number>({
	key: "kits_expired_expected",
	label: say`Kits gone out of date, average`,
	unit: say`kits/day`,
	formula: say`Kits in service ÷ days a kit stays ready ÷ (1 + x/(S+1) + x²/((S+1)(S+2)) + …), where S is the kits in service and x the uses in the days a kit stays ready; the oldest ready kit is used first.`,
	source: sources.perishable,
	inputs: {
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		usesPerDay: { label: say`Kit uses a day`, unit: say`kits/day`, min: 0 },
		readyLifeDays: { label: say`Days a disinfected kit stays ready`, unit: say`days`, min: 0.01 },
	},
	example: {
		inputs: { kitsInService: 3, usesPerDay: 0.6, readyLifeDays: 7 },
		result: 0.100482,
		within: 1e-6,
	},
	compute: ({ kitsInService, usesPerDay, readyLifeDays }) => {
		const usesInLife = usesPerDay * readyLifeDays;
		let term = 1;
		let sum = 1;
		for (let k = kitsInService + 1; term > sum * Number.EPSILON && Number.isFinite(sum); k++) {
			term *= usesInLife / k;
			sum += term;
		}
		return kitsInService / readyLifeDays / sum;
	},
});
