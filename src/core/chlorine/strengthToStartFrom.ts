import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { ML_PER_LITRE } from "./measureOut.ts";

interface Inputs {
	readonly targetPct: number;
	readonly bathLitres: number;
	readonly kits: number;
	readonly mlPerKit: number;
	readonly forWetKits: "yes" | "no";
}

/** Strength that is mixed, so that the soak still has the wanted one after its wet kits. */
export const strengthToStartFrom = calculation<Inputs, number>({
	key: "strength_to_start_from_pct",
	label: say`Strength to mix`,
	unit: "%",
	formula: say`Strength of the soak × (bath + kits × water each carries in) ÷ bath, so that it is still reached after the last wet kit; the strength of the soak itself where it is not mixed stronger for wet kits.`,
	source: sources.carryIn,
	caution: say.safety`Drain and dry the pieces before the soak.`,
	inputs: {
		targetPct: { label: say`Strength of the soak`, unit: "%", min: 1e-6 },
		bathLitres: { label: say`Solution in the soak container`, unit: "L", min: 1e-6 },
		kits: { label: say`Kits through one solution`, unit: say`kits`, min: 0 },
		mlPerKit: { label: say`Water a wet kit carries into the soak`, unit: say`mL/kit`, min: 0 },
		forWetKits: { label: say`Mixed stronger for wet kits`, unit: "" },
	},
	example: {
		// 3 kits bring 90 mL into 5 L: 0.5 % × 5.09 ÷ 5.
		inputs: { targetPct: 0.5, bathLitres: 5, kits: 3, mlPerKit: 30, forWetKits: "yes" },
		result: 0.509,
		within: 1e-12,
	},
	compute: ({ targetPct, bathLitres, kits, mlPerKit, forWetKits }) =>
		forWetKits === "no"
			? targetPct
			: (targetPct * (bathLitres + (kits * mlPerKit) / ML_PER_LITRE)) / bathLitres,
});
