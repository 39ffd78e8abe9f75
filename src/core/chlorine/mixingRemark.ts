import { atMost } from "../atMost.ts";
import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { lotRemark } from "./lotRemark.ts";

interface Inputs {
	readonly strengthMadePct: number;
	readonly afterCarryInPct: number;
	readonly targetPct: number;
	/** Strength that is mixed for it. */
	readonly wantedPct: number;
	readonly kits: number;
	/** What is to be known of the lot, said first. */
	readonly ofLot: string;
}

/** A mix is remarked on that is so much of the target above what the target and wet kits ask for. */
const FAR_OVER_PCT = 20;
const ROUNDING_ERROR = 1e-9;

const shown = (pct: number) => say`${atMost(pct, 3)} %`;

/** What to look out for in a mix, in words; empty where there is nothing. */
export const mixingRemark = calculation<Inputs, string>({
	key: "mixing_remark",
	label: say`Remark`,
	unit: "",
	formula: say`Said where the mix is over the strength to mix by more than ${FAR_OVER_PCT} % of the strength of the soak, or falls under the strength of the soak after the wet kits; after what is to be known of the lot.`,
	source: commonPractice,
	inputs: {
		strengthMadePct: { label: say`Strength made`, unit: "%" },
		afterCarryInPct: { label: say`Strength after wet kits`, unit: "%" },
		targetPct: { label: say`Strength of the soak`, unit: "%" },
		wantedPct: { label: say`Strength to mix`, unit: "%" },
		kits: { label: say`Kits through one solution`, unit: say`kits` },
		ofLot: { label: lotRemark.label, unit: "" },
	},
	example: {
		inputs: {
			strengthMadePct: 0.7,
			afterCarryInPct: 0.7,
			targetPct: 0.5,
			wantedPct: 0.5,
			kits: 3,
			ofLot: "",
		},
		result: say`More than ${FAR_OVER_PCT} % over ${shown(0.5)}: use a finer measure or a larger volume.`,
		within: 0,
	},
	compute: ({ ofLot, strengthMadePct, afterCarryInPct, targetPct, wantedPct, kits }) => {
		const remarks = ofLot === "" ? [] : [ofLot];
		if (strengthMadePct - wantedPct > (targetPct * FAR_OVER_PCT) / 100 + ROUNDING_ERROR)
			remarks.push(
				say`More than ${FAR_OVER_PCT} % over ${shown(targetPct)}: use a finer measure or a larger volume.`,
			);
		if (afterCarryInPct < targetPct - ROUNDING_ERROR)
			remarks.push(
				say`Under ${shown(targetPct)} after ${kits} wet kits: drain and dry them well, or choose yes under “Mixed stronger for wet kits”.`,
			);
		return remarks.join(" ");
	},
});
