import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

const SEA_LEVEL_KPA = 101.325;
const MMHG_PER_KPA = 760 / SEA_LEVEL_KPA;
/** Fall of the air pressure with height, a metre, and the power it is taken to. */
const FALL_PER_M = 2.25577e-5;
const FALL_POWER = 5.25588;
/** Antoine's equation for water up to 100 °C, pressure in mmHg. */
const ANTOINE = { a: 8.07131, b: 1730.63, c: 233.426 };

/** Boiling point of water at a height above the sea. */
export const boilingPoint = calculation<{ altitudeM: number }, number>({
	key: "boiling_point_c",
	label: say`Boiling point`,
	unit: "°C",
	formula: say`Air pressure p = ${SEA_LEVEL_KPA} × (1 − ${FALL_PER_M * 1e5}·10⁻⁵ × height)^${FALL_POWER} kPa; boiling point = ${ANTOINE.b} ÷ (${ANTOINE.a} − log p) − ${ANTOINE.c}, p in mmHg.`,
	source: sources.standardAtmosphere,
	inputs: { altitudeM: { label: say`Height above the sea`, unit: "m", min: -400, max: 5500 } },
	example: { inputs: { altitudeM: 2000 }, result: 93.4, within: 0.05 },
	compute: ({ altitudeM }) => {
		const kpa = SEA_LEVEL_KPA * (1 - FALL_PER_M * altitudeM) ** FALL_POWER;
		return ANTOINE.b / (ANTOINE.a - Math.log10(kpa * MMHG_PER_KPA)) - ANTOINE.c;
	},
});
