import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { preparationsOfDay } from "../../chlorine/preparationsOfDay.ts";
import { always, type Counts } from "../../counts/counts.ts";
import { memoized } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { LoadSize } from "../../rounds/loads.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { roundsOfKinds } from "../../rounds/roundsOfKinds.ts";
import { loadsOfDay } from "../../rounds/roundsThatRun.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { isMixed, litresOfPreparation } from "../chlorine/litresOfPreparation.ts";
import type { LoadsByMethod } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";

const loads = memoized(loadsOfDay);
const preparations = memoized(preparationsOfDay);
const kitsOfKinds = memoized(roundsOfKinds);

/** How often the solution is made on a day with these rounds. */
export function preparationsOn(unit: UnitFigures, rounds: Figure<RoundsOfDay>): Figure<Counts> {
	const { solution_made: made, solution_life_hours: lifeHours } = unit.read.settings;
	if (!isMixed(unit.read))
		return derive(noPreparations, { litres: litresOfPreparation(unit.read) });
	const soak = valueIn(unit.loads)?.find(({ method }) => method === "chlorine");
	return derive(preparations, { rounds: roundsBy(soak, rounds), made, lifeHours });
}

/** Only the rounds' kits that go by a method; all of them where none is named. */
export function roundsBy(
	load: LoadSize | undefined,
	rounds: Figure<RoundsOfDay>,
): Figure<RoundsOfDay> {
	if (!load?.ofKinds) return rounds;
	const ofKinds = nameFigure(say`Kinds of kit that go this way`, load.ofKinds);
	return derive(kitsOfKinds, { rounds, ofKinds });
}

/** How many loads of each method a day's rounds make. */
export function loadsOn(
	unit: UnitFigures,
	rounds: Figure<RoundsOfDay>,
): LoadsByMethod<Figure<Counts>> {
	const { loads: sizes } = unit;
	if (!sizes.outcome.ok) return { chlorine: sizes as Figure<never> };
	return Object.fromEntries(
		sizes.outcome.value.map((load) => [
			load.method,
			derive(loads, {
				rounds: roundsBy(load, rounds),
				kitsInLoad: nameFigure(say`Kits in one load`, load.kits),
			}),
		]),
	);
}

const noPreparations = calculation<{ litres: number }, Counts>({
	key: "no_preparations",
	label: say`Preparations: how likely each number is`,
	unit: say`preparations`,
	formula: say`None: no piece goes into chlorine, and none is made for wiping.`,
	source: definition,
	inputs: { litres: { label: say`Litres of a preparation`, unit: "L", min: 0 } },
	example: { inputs: { litres: 0 }, result: always(0), within: 0 },
	compute: () => always(0),
});
