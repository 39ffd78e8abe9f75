import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { GRAMS_PER_MOLE } from "./availableChlorine.ts";
import { errorPct, READING_ERROR } from "./readingRange.ts";

interface Inputs {
	readonly gramsPerLitre: number;
	readonly storeC: number;
	readonly days: number;
	readonly fadeFactor: number;
}

const ZERO_CELSIUS_KELVIN = 273.15;
const GAS_CONSTANT = 8.314;
const SECONDS_PER_DAY = 86_400;
/** Salt that comes with the excess of alkali, mol/L. */
const EXTRA_IONIC_STRENGTH = 0.05;
/** Each hypochlorite ion comes with a chloride ion. */
const IONS = 2;
/** The fitted law: how much faster per ionic strength, Eyring's factor, heat (J/mol) and entropy (J/mol/K) of activation. */
const PER_IONIC_STRENGTH = 0.149;
const EYRING_MANTISSA = 2.083;
const ACTIVATION_HEAT = 101_800;
const ACTIVATION_ENTROPY = 56.5;

/**
 * Rate of the fading of hypochlorite, L/(mol·s).
 *
 * @param ionicStrength mol/L; 2 × molarity + 0.05, held at its first value
 * @param celsius fitted for 15 to 55
 * @example fadingRate(3.576, 25) // 3.46e-8
 */
export function fadingRate(ionicStrength: number, celsius: number): number {
	const kelvin = celsius + ZERO_CELSIUS_KELVIN;
	const activated =
		Math.exp(-ACTIVATION_HEAT / (GAS_CONSTANT * kelvin)) *
		Math.exp(-ACTIVATION_ENTROPY / GAS_CONSTANT);
	return (
		10 **
		(PER_IONIC_STRENGTH * ionicStrength + Math.log10(EYRING_MANTISSA * 1e10 * kelvin * activated))
	);
}

/**
 * Strength of a liquid product after some days in the store.
 *
 * d[OCl]/dt = −k·[OCl]², so 1/C = 1/C₀ + k·t. Real bottles fade faster than the
 * law: the unit's factor multiplies k.
 */
export const strengthOfLiquid = calculation<Inputs, number>({
	key: "strength_of_liquid",
	label: say`Strength of the liquid today`,
	unit: "g/L",
	formula: say`1 ÷ (1 ÷ first strength + factor × k × time), in mol/L; log k = ${PER_IONIC_STRENGTH} × ionic strength + log(${EYRING_MANTISSA}·10¹⁰ × T × e^(−${ACTIVATION_HEAT} ÷ RT) × e^(−${ACTIVATION_ENTROPY} ÷ R)), ionic strength = ${IONS} × molarity + ${EXTRA_IONIC_STRENGTH}.`,
	source: sources.fading,
	caution: say.safety`Computed, not measured. A test strip has an error of ${errorPct(READING_ERROR.strip.least)} to ${errorPct(READING_ERROR.strip.most)} %, and never overrules a discard rule.`,
	inputs: {
		gramsPerLitre: { label: say`Strength on the label`, unit: "g/L", min: 0 },
		storeC: { label: say`Temperature of the store`, unit: "°C", min: 0, max: 55 },
		days: { label: say`Days since it was made`, unit: say`days`, min: 0 },
		fadeFactor: {
			label: say`Loses strength faster than in the laboratory, by`,
			unit: say`times`,
			min: 0,
		},
	},
	example: {
		inputs: { gramsPerLitre: 50, storeC: 30, days: 180, fadeFactor: 1 },
		result: 36.56,
		within: 0.005,
	},
	compute: ({ gramsPerLitre, storeC, days, fadeFactor }) => {
		const molar = gramsPerLitre / GRAMS_PER_MOLE;
		const rate = fadeFactor * fadingRate(IONS * molar + EXTRA_IONIC_STRENGTH, storeC);
		return gramsPerLitre / (1 + molar * rate * days * SECONDS_PER_DAY);
	},
});
