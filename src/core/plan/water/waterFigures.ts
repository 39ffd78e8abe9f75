import { calculation, defaultFigure, derive, type Figure } from "../../calculation.ts";
import { fixed } from "../../fixed.ts";
import { valueIn } from "../../outcome.ts";
import type { Settings } from "../../read/readSettings.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { firstRinse, loadsOf, type TimedStep } from "../../rounds/timedSteps.ts";
import { say } from "../../say.ts";
import { commonPractice, sources } from "../../sources.ts";
import { type Boiling, boilingOfRound, lightBy } from "../../water/boilingOfRound.ts";
import { boilingPoint } from "../../water/boilingPoint.ts";
import { coolingMinutes, rateFromReading } from "../../water/coolingMinutes.ts";
import { type Fuel, fuelData } from "../../water/fuelData.ts";
import { fuelQuantity } from "../../water/fuelQuantity.ts";
import { KJ_PER_LITRE_PER_C } from "../../water/heatToBoil.ts";
import { netPower } from "../../water/netPower.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";

/** What holds for every pot of water the unit boils. */
export interface StoveFigures {
	readonly boilingC: Figure;
	readonly netKw: Figure;
	readonly efficiency: Figure;
	readonly coolMinutes: Figure;
	/** MJ/kg, null for electricity. */
	readonly mjPerKg: Figure<number | null>;
}

export function stoveFigures({ settings }: ReadWorkbook): StoveFigures {
	const fuel: Fuel = fuelData[valueIn(settings.fuel) ?? "charcoal_traditional"];
	const place = { file: "unit.csv", line: null, column: "fuel" };
	const given = settings.stove_efficiency;
	const efficiency = isBlank(given)
		? defaultFigure(given.label, given.unit, fuel.efficiency, place)
		: (given as Figure);
	const boilingC = derive(boilingPoint, { altitudeM: settings.altitude_m });
	return {
		boilingC,
		efficiency,
		netKw: derive(netPower, { heatKw: settings.heat_kw, efficiency }),
		coolMinutes: derive(coolingMinutes, {
			fromC: boilingC,
			toC: settings.rinse_below_c,
			roomC: settings.room_c,
			coolingPerHour: coolingRate(settings),
			potLitres: settings.pot_litres,
		}),
		mjPerKg: defaultFigure(say`Heating value of the fuel`, "MJ/kg", fuel.mjPerKg, place),
	};
}

/** The unit's own reading of a pot where one was taken, else the rate in the settings. */
function coolingRate(settings: Settings): Figure {
	const { cooling_first_c: firstC, cooling_second_c: secondC, cooling_hours: hours } = settings;
	if ([firstC, secondC, hours].every(isBlank)) return settings.cooling_per_hour;
	const { room_c: roomC, pot_litres: potLitres } = settings;
	return derive(
		rateFromReading,
		{ firstC, secondC, hours, roomC, potLitres },
		{ file: "unit.csv", line: null, column: "cooling_first_c" },
	);
}

/** Nothing was typed; something typed that cannot be read is not blank. */
export function isBlank({ outcome }: Figure<unknown>): boolean {
	return !outcome.ok && outcome.problems[0]?.code === "not-given";
}

/** Boiling the water of one round. */
export interface RoundBoiling {
	readonly boiling: Figure<Boiling>;
	/** Minutes after the midnight of the round's day; negative on the day before. */
	readonly lightBy: Figure;
	readonly fuel: Figure;
}

const loadsOfRound = fromSteps(
	"loads_of_round",
	say`Loads of the round, set aside`,
	say`loads`,
	loadsOf,
	2,
);
const rinseOfRound = fromSteps(
	"first_rinse",
	say`First rinse of the round`,
	say`minutes after midnight`,
	(steps) => firstRinse(steps) ?? 0,
	470,
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
		formula: say`From the steps of the round by the clock, for the kits set aside for it.`,
		source: commonPractice,
		inputs: { steps: { label: say`Steps of the round by the clock`, unit: "" } },
		example: {
			inputs: {
				steps: [
					{ step: "wash", startsAt: 420, endsAt: 450, handsOn: "yes", kits: 5, load: 0 },
					{ step: "soak", startsAt: 450, endsAt: 470, handsOn: "no", kits: 3, load: 1 },
					{ step: "soak", startsAt: 470, endsAt: 490, handsOn: "no", kits: 2, load: 2 },
				],
			},
			result: ofExample,
			within: 0,
		},
		compute: ({ steps }) => of(steps),
	});
}

const { result: example } = boilingOfRound.example;

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
	{ settings }: ReadWorkbook,
	stove: StoveFigures,
	round: RoundPlan,
): RoundBoiling {
	const { steps } = round;
	const boiling = derive(boilingOfRound, {
		loads: derive(loadsOfRound, { steps }),
		bucketsPerLoad: settings.rinse_buckets,
		bucketLitres: settings.bucket_fill_litres,
		potLitres: settings.pot_litres,
		pots: settings.pots,
		netKw: stove.netKw,
		drawnC: settings.tap_water_c,
		boilingC: stove.boilingC,
		holdMinutes: settings.boil_hold_minutes,
		coolMinutes: stove.coolMinutes,
	});
	return {
		boiling,
		lightBy: derive(lightBy, { firstRinse: derive(rinseOfRound, { steps }), boiling }),
		fuel: derive(fuelQuantity, {
			kj: derive(heatOfBoiling, { boiling }),
			holdMinutes: derive(heldMinutes, { boiling }),
			netKw: stove.netKw,
			efficiency: stove.efficiency,
			mjPerKg: stove.mjPerKg,
		}),
	};
}
