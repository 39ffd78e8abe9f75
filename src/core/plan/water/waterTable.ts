import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { listFigure } from "../../read/listFigure.ts";
import { rowOnDemand } from "../../rowOnDemand.ts";
import { say } from "../../say.ts";
import { waterSheet } from "../../sheets/water.ts";
import { definition } from "../../source.ts";
import type { Rates } from "../../stock/ratesOfItem.ts";
import { useExpected, useSetAside } from "../../stock/useSetAside.ts";
import { takenFrom, type WaterSource, waterRates } from "../../water/waterRates.ts";
import { roundsByDate } from "../byDate.ts";
import { litresOfPreparation } from "../chlorine/litresOfPreparation.ts";
import type { LoadsByMethod, Pair } from "../countFigures.ts";
import type { DayFigures } from "../dayFigures.ts";
import { pieceFire } from "../methods/pieceFire.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { fuelCells, fuelOfLoad, fuelOfSolution } from "./fuelOfLoad.ts";
import { potsAtOnce } from "./hearthFigures.ts";
import { ratesOfDay } from "./ratesOfDay.ts";
import { stoveFigures } from "./stoveFigures.ts";

const containers = calculation<{ litres: number; each: number }, number>({
	key: "containers",
	label: say`Containers`,
	unit: say`containers`,
	formula: say`Water to prepare for ÷ size of a container.`,
	source: definition,
	rounding: say`Up to whole containers.`,
	inputs: {
		litres: { label: say`Water, prepare for`, unit: "L", min: 0 },
		each: { label: say`Size of a water container`, unit: "L", min: 1e-3 },
	},
	example: { inputs: { litres: 81, each: 20 }, result: 5, within: 0 },
	compute: ({ litres, each }) => Math.ceil(litres / each),
});

/** Stands in the place of a source for what no source gives. */
export const NOT_COVERED = say`not covered`;

const fromSources = calculation<{ litres: number; sources: readonly WaterSource[] }, string>({
	key: "taken_from",
	label: say`From`,
	unit: "",
	formula: say`The sources in their order, each up to what it gives a day.`,
	source: definition,
	rounding: say`Up to whole litres.`,
	inputs: {
		litres: { label: say`Water, prepare for`, unit: "L", min: 0 },
		sources: { label: say`Where water comes from`, unit: say`L/day` },
	},
	example: {
		inputs: {
			litres: 80.5,
			sources: [
				{ source: "tap", litres_per_day: 60 },
				{ source: "well", litres_per_day: null },
			],
		},
		result: "tap (60 L), well (21 L)",
		within: 0,
	},
	compute: ({ litres, sources }) => {
		if (sources.length === 0) return "";
		const { taken, missing } = takenFrom(litres, sources);
		const parts = taken.map((part) => `${part.source} (${Math.ceil(part.litres)} L)`);
		if (missing > 0) parts.push(`${NOT_COVERED} (${Math.ceil(missing)} L)`);
		return parts.join(", ");
	},
});

const wardTotal = calculation<{ litres: readonly number[] }, number>({
	key: "ward_litres",
	label: say`Other solution on the ward`,
	unit: say`L/day`,
	formula: say`All other uses added up; 0 where none are listed.`,
	source: definition,
	inputs: { litres: { label: say`Litres a day`, unit: say`L/day` } },
	example: { inputs: { litres: [3, 5] }, result: 8, within: 0 },
	compute: ({ litres }) => litres.reduce((sum, part) => sum + part, 0),
});

interface WaterDay {
	readonly day: DayFigures;
	/** Loads of rinse water boiled on it. */
	readonly loads: Pair;
	/** Loads of each method that come. */
	readonly ofMethods: LoadsByMethod<Pair>;
	readonly preparations: Pair;
}

/** All water of each day, and the fuel to boil what is boiled of it. */
export function waterTable(
	unit: UnitFigures,
	days: readonly WaterDay[],
	isBeforehand: boolean,
): ComputedTable<typeof waterSheet> {
	const { settings, tables } = unit.read;
	const stove = stoveFigures(unit.read);
	const ward = listFigure(say`Litres a day`, say`L/day`, tables.wardSolution, (rows) =>
		rows.map(({ value }) => value.litres_per_day),
	);
	const solutionLitres = litresOfPreparation(unit.read);
	const rates = derive(waterRates, {
		soapyLitres: settings.soapy_water_litres,
		plainRinseLitres: settings.plain_rinse_litres,
		solutionLitres,
		solutionMade: settings.solution_made,
		wardLitres: derive(wardTotal, { litres: ward }),
		bucketsPerLoad: settings.rinse_buckets,
		bucketLitres: settings.bucket_fill_litres,
		litresOnFire: derive(onFire, { potLitres: settings.pot_litres, pots: potsAtOnce(settings) }),
		loads: unit.loads,
		boilLitres: settings.disinfect_boil_litres,
		boilMinutes: settings.disinfect_boil_minutes,
		steamLitres: settings.steam_litres,
		steamMinutes: settings.steam_minutes,
		netKw: stove.netKw,
		holdMinutes: stove.holdMinutes,
		descaleBathLitres: settings.descale_fill_litres,
		vinegarLitres: unit.vinegarPerDescale,
		descaleRinseLitres: settings.descale_rinse_litres,
		kinds: nameFigure(say`Kinds of kit`, unit.kinds.length),
	});
	const isOnceADay = valueIn(settings.solution_made) === "each_day";
	const waterSources = listFigure(
		say`Where water comes from`,
		say`L/day`,
		tables.waterSources,
		(rows) => rows.map(({ value }): WaterSource => value),
	);
	return onDemand(waterSheet, () => {
		const fuel = fuelOfLoad(unit.read, stove);
		const pieces = (["boiling", "steam"] as const).map((method) => ({
			method,
			each: pieceFire(unit.read, method).fuel,
		}));
		const solution = fuelOfSolution(unit.read, stove);
		const rowOfDay = ({ day, loads, ofMethods, preparations }: WaterDay) => {
			const ratesFor = (part: keyof Pair) =>
				ratesOfDay(rates, {
					loads: isBeforehand ? loads[part] : undefined,
					solution: isOnceADay
						? { preparations: preparations[part], litres: solutionLitres }
						: undefined,
				});
			const of = { expected: ratesFor("expected"), setAside: ratesFor("setAside") };
			return {
				...rowOf(unit, day, of, waterSources),
				...fuelCells(stove, [
					...(ofMethods.chlorine ? [{ each: fuel, loads }] : []),
					...(solution ? [{ each: solution, loads: preparations }] : []),
					...pieces.flatMap(({ method, each }) => {
						const made = ofMethods[method];
						return made ? [{ each, loads: made }] : [];
					}),
				]),
			};
		};
		return days.map((day) => rowOnDemand(waterSheet, () => rowOfDay(day)));
	});
}

const onFire = calculation<{ potLitres: number; pots: number }, number>({
	key: "litres_on_fire",
	label: say`Water on the fire at once`,
	unit: "L",
	formula: say`Pots × litres in a pot.`,
	source: definition,
	inputs: {
		potLitres: { label: say`Water in a pot`, unit: "L", min: 0 },
		pots: { label: say`Pots on the fire at once`, unit: say`pots`, min: 0 },
	},
	example: { inputs: { potLitres: 10, pots: 2 }, result: 20, within: 0 },
	compute: ({ potLitres, pots }) => potLitres * pots,
});

function rowOf(
	unit: UnitFigures,
	day: DayFigures,
	rates: { readonly expected: Figure<Rates>; readonly setAside: Figure<Rates> },
	waterSources: Figure<WaterSource[]>,
) {
	const { settings } = unit.read;
	const use = {
		days: roundsByDate([day]),
		loads: unit.loads,
		descaleEvery: settings.descale_every_rounds,
	};
	const litres = derive(useSetAside, {
		...use,
		rates: rates.setAside,
		confidence: settings.plan_confidence,
	});
	return {
		date: nameFigure(say`Date`, day.date),
		litres_expected: derive(useExpected, { ...use, rates: rates.expected }),
		litres_set_aside: litres,
		containers: derive(containers, { litres, each: settings.water_container_litres }),
		taken_from: derive(fromSources, { litres, sources: waterSources }),
	};
}
