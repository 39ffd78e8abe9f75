import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { ML_PER_LITRE } from "./measureOut.ts";

interface Inputs {
	readonly strengthMadePct: number;
	readonly bathLitres: number;
	readonly kits: number;
	readonly mlPerKit: number;
}

/** Strength of the soak after wet kits have carried water into it. */
export const strengthAfterCarryIn = calculation<Inputs, number>({
	key: "strength_after_carry_in_pct",
	label: say`Strength after wet kits`,
	unit: "%",
	formula: say`Strength made × bath ÷ (bath + kits × water each carries in).`,
	source: sources.carryIn,
	caution: say.safety`Drain and dry the pieces before the soak.`,
	inputs: {
		strengthMadePct: { label: say`Strength made`, unit: "%", min: 0 },
		bathLitres: { label: say`Solution in the soak container`, unit: "L", min: 1e-6 },
		kits: { label: say`Kits through one solution`, unit: say`kits`, min: 0 },
		mlPerKit: { label: say`Water a wet kit carries into the soak`, unit: say`mL/kit`, min: 0 },
	},
	example: {
		inputs: { strengthMadePct: 0.5, bathLitres: 5, kits: 1, mlPerKit: 100 },
		result: 0.490196,
		within: 1e-6,
	},
	compute: ({ strengthMadePct, bathLitres, kits, mlPerKit }) =>
		(strengthMadePct * bathLitres) / (bathLitres + (kits * mlPerKit) / ML_PER_LITRE),
});
