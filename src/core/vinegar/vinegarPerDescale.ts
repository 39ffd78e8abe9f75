import { calculation } from "../calculation.ts";
import { always } from "../counts/counts.ts";
import { spread } from "../counts/spread.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";

interface Inputs {
	readonly bathLitres: number;
	readonly wantedAcidPct: number;
	readonly vinegarAcidPct: number;
}

const CAUTION = say.safety`Acid on chlorine frees a poisonous gas. A vessel, drain and cloth of its own; rinse and drain until there is no smell before any chlorine.`;

/** Vinegar for one descaling bath. */
export const vinegarPerDescale = calculation<Inputs, number>({
	key: "vinegar_per_descale",
	label: say`Vinegar for one descaling`,
	unit: "L",
	formula: say`Bath × acid wanted ÷ acid in the vinegar.`,
	source: sources.vinegarStrength,
	caution: CAUTION,
	inputs: {
		bathLitres: { label: say`Descaling bath`, unit: "L", min: 0 },
		wantedAcidPct: { label: say`Acid wanted in the bath`, unit: "%", min: 0 },
		vinegarAcidPct: { label: say`Acid in the vinegar`, unit: "%", min: 0.1 },
	},
	example: {
		inputs: { bathLitres: 2, wantedAcidPct: 2.5, vinegarAcidPct: 5 },
		result: 1,
		within: 0,
	},
	compute: ({ bathLitres, wantedAcidPct, vinegarAcidPct }) =>
		vinegarAcidPct < wantedAcidPct
			? refuse({
					code: "vinegar-too-weak",
					received: say`${vinegarAcidPct} %`,
					allowed: say`at least ${wantedAcidPct} %`,
					message: say`The vinegar holds ${vinegarAcidPct} % acid and ${wantedAcidPct} % is wanted; it cannot be made stronger.`,
					place: { file: "unit.csv", line: null, column: "vinegar_acid_pct" },
				})
			: (bathLitres * wantedAcidPct) / vinegarAcidPct,
});

interface VinegarInputs {
	readonly rounds: number;
	readonly everyRounds: number;
	readonly litresEach: number;
}

const vinegarInputs = {
	rounds: { label: say`Rounds that run`, unit: say`rounds`, min: 0 },
	everyRounds: { label: say`Descale every so many rounds that run`, unit: say`rounds`, min: 0 },
	litresEach: { label: say`Vinegar for one descaling`, unit: "L", min: 0 },
};

/** Vinegar expected: descalings expected are rounds expected ÷ rounds between descalings. */
export const vinegarExpected = calculation<VinegarInputs, number>({
	key: "vinegar_litres_expected",
	label: say`Vinegar, average`,
	unit: "L",
	formula: say`Average rounds ÷ rounds between descalings × vinegar for one. 0 between means never.`,
	source: sources.vinegarStrength,
	caution: CAUTION,
	inputs: vinegarInputs,
	example: { inputs: { rounds: 7, everyRounds: 14, litresEach: 3 }, result: 1.5, within: 0 },
	compute: ({ rounds, everyRounds, litresEach }) =>
		everyRounds === 0 ? 0 : (rounds / everyRounds) * litresEach,
});

/** Vinegar set aside: whole descalings for the rounds set aside. */
export const vinegarSetAside = calculation<VinegarInputs, number>({
	key: "vinegar_litres_set_aside",
	label: say`Vinegar, prepare for`,
	unit: "L",
	formula: say`Rounds to prepare for ÷ rounds between descalings, rounded up to whole descalings, × vinegar for one.`,
	source: sources.vinegarStrength,
	rounding: say`Up to whole descalings.`,
	caution: CAUTION,
	inputs: vinegarInputs,
	example: { inputs: { rounds: 8, everyRounds: 7, litresEach: 3 }, result: 6, within: 0 },
	// Wherever in its count of rounds the first day falls, each place as likely as the others.
	follows: {
		input: "rounds",
		turned: ({ counts }, { everyRounds, litresEach }) => ({
			counts: everyRounds === 0 ? always(0) : spread(counts, (rounds) => rounds / everyRounds),
			size: litresEach,
		}),
	},
	compute: ({ rounds, everyRounds, litresEach }) =>
		everyRounds === 0 ? 0 : Math.ceil(rounds / everyRounds) * litresEach,
});
