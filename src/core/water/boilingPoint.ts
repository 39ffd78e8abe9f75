import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

const SEA_LEVEL_KPA = 101.325;
const MMHG_PER_KPA = 760 / SEA_LEVEL_KPA;

/** Boiling point of water at a height above the sea. */
export const boilingPoint = calculation<{ altitudeM: number }, number>({
	key: "boiling_point_c",
	label: say`Boiling point`,
	unit: "°C",
	formula: say`Air pressure p = 101.325 × (1 − 2.25577·10⁻⁵ × height)^5.25588 kPa; boiling point = 1730.63 ÷ (8.07131 − log p) − 233.426, p in mmHg.`,
	source: sources.standardAtmosphere,
	inputs: { altitudeM: { label: say`Height above the sea`, unit: "m", min: -400, max: 5500 } },
	example: { inputs: { altitudeM: 2000 }, result: 93.4, within: 0.05 },
	compute: ({ altitudeM }) => {
		const kpa = SEA_LEVEL_KPA * (1 - 2.25577e-5 * altitudeM) ** 5.25588;
		return 1730.63 / (8.07131 - Math.log10(kpa * MMHG_PER_KPA)) - 233.426;
	},
});
