import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { fixed } from "../../fixed.ts";
import { memoizeByObject } from "../../memoize.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { exampleSoak } from "../../rounds/exampleSoak.ts";
import { firstRinse, lastRinse, loadsOf, type TimedStep } from "../../rounds/timedSteps.ts";
import { say } from "../../say.ts";
import type { RoundsRow } from "../../sheets/rounds.ts";
import { commonPractice } from "../../source.ts";
import { sources } from "../../sources.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";
import type { WaterNeed } from "../../water/batch.ts";
import { type Boiling, boilingOfRound } from "../../water/boilingOfRound.ts";
import { fuelQuantity } from "../../water/fuelQuantity.ts";
import { KJ_PER_LITRE_PER_C } from "../../water/heatToBoil.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { boilingOnStove } from "./boilingOnStove.ts";
import { roundMixes } from "./roundMixes.ts";
import { solutionWater } from "./solutionWater.ts";
import type { StoveFigures } from "./stoveFigures.ts";

/** Boiling the water of one round. */
export interface RoundBoiling {
	readonly boiling: Figure<Boiling>;
	/** Its litres, and by when. */
	readonly need: Figure<WaterNeed>;
}

const loadsOfRound = fromSteps(
	"loads_of_round",
	say`Loads of the round, prepare for`,
	say`loads`,
	(steps) => loadsOf(steps, "chlorine"),
	2,
);

function fromSteps(
	key: string,
	label: string,
	unit: string,
	of: (steps: readonly TimedStep[]) => number,
	ofExample: number,
) {
	return calculation<{ steps: readonly TimedStep[] }, number>({
		key,
		label,
		unit,
		formula: say`From the steps of the round by the clock, for the kits it prepares for.`,
		source: commonPractice,
		inputs: { steps: { label: say`Steps of the round by the clock`, unit: "" } },
		example: {
			inputs: {
				steps: [
					{
						step: "wash",
						startsAt: 420,
						endsAt: 450,
						handsOn: "yes",
						kits: 5,
						load: 0,
						method: null,
					},
					exampleSoak,
					{
						step: "soak",
						startsAt: 470,
						endsAt: 490,
						handsOn: "no",
						kits: 2,
						load: 2,
						method: "chlorine",
					},
				],
			},
			result: ofExample,
			within: 0,
		},
		compute: ({ steps }) => of(steps),
	});
}

const { result: example } = boilingOfRound.example;

const needOfRound = calculation<
	{ steps: readonly TimedStep[]; boiling: Boiling; solutionLitres: number; midnight: number },
	WaterNeed
>({
	key: "water_of_round",
	label: say`Water of the round`,
	unit: "L",
	formula: say`For the rinse buckets of the loads to prepare for; cool by the first rinse of the round, or by its start where the solution is made with it, and in date until the last one has ended.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of the round by the clock`, unit: "" },
		boiling: { label: say`Boiling the rinse water`, unit: "" },
		solutionLitres: { label: say`Boiled water for the solution`, unit: "L", min: 0 },
		midnight: {
			label: say`Midnight of the round's day`,
			unit: say`minutes after the plan's first midnight`,
		},
	},
	example: {
		inputs: {
			steps: [
				exampleSoak,
				{
					step: "rinse",
					startsAt: 470,
					endsAt: 480,
					handsOn: "yes",
					kits: 3,
					load: 1,
					method: "chlorine",
				},
			],
			boiling: example,
			solutionLitres: 0,
			midnight: 1440,
		},
		result: { litres: 30, from: 1910, until: 1920 },
		within: 0,
	},
	compute: ({ steps, boiling, solutionLitres, midnight }) => ({
		litres: boiling.litres,
		from: midnight + ((solutionLitres > 0 ? steps[0]?.startsAt : firstRinse(steps)) ?? 0),
		until: midnight + (lastRinse(steps) ?? 0),
	}),
});

const heatOfBoiling = calculation<{ boiling: Boiling }, number>({
	key: "heat_kj",
	label: say`Heat to bring the water to the boil`,
	unit: "kJ",
	formula: say`Litres to start with × ${fixed(KJ_PER_LITRE_PER_C, 3)} × (boiling point − temperature drawn).`,
	source: sources.heat,
	inputs: { boiling: { label: say`Boiling the rinse water`, unit: "" } },
	example: { inputs: { boiling: example }, result: 9456.174, within: 0 },
	compute: ({ boiling }) => boiling.kj,
});

const heldMinutes = calculation<{ boiling: Boiling }, number>({
	key: "held_minutes",
	label: say`Kept at the boil, all batches`,
	unit: "min",
	formula: say`Time held × batches.`,
	source: commonPractice,
	inputs: { boiling: { label: say`Boiling the rinse water`, unit: "" } },
	example: { inputs: { boiling: example }, result: 2, within: 0 },
	compute: ({ boiling }) => boiling.holdMinutes * boiling.batches,
});

export function roundBoiling(
	unit: UnitFigures,
	stove: StoveFigures,
	round: RoundPlan,
	firstDay: IsoDate,
): RoundBoiling {
	const { read } = unit;
	const { steps } = round;
	const solutionLitres = solutionOfRound(round.round, unit);
	const day = daysFrom(firstDay, round.date);
	const boiling = boilingOnStove(read, stove, {
		loads: derive(loadsOfRound, { steps }),
		solutionLitres,
		coolMinutes: stove.coolMinutes,
	});
	const need = derive(needOfRound, {
		steps,
		boiling,
		solutionLitres,
		midnight: nameFigure(say`Midnight of the round's day`, day * MINUTES_PER_DAY),
	});
	return { boiling, need };
}

/** The same on every day. */
const solutionOfRound = memoizeByObject((round: GoodRow<RoundsRow>, unit: UnitFigures) =>
	solutionWater(unit.read, roundMixes(unit, { round })),
);

/** Fuel to heat the water and to hold each batch at the boil. */
export function fuelOfBoiling(stove: StoveFigures, boiling: Figure<Boiling>): Figure {
	return derive(fuelQuantity, {
		kj: derive(heatOfBoiling, { boiling }),
		holdMinutes: derive(heldMinutes, { boiling }),
		netKw: stove.netKw,
		efficiency: stove.efficiency,
		mjPerKg: stove.mjPerKg,
	});
}
