import { calculation, derive, type Figure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { MINUTES_PER_HOUR } from "../../values/clock.ts";
import type { Hearth } from "../../water/batch.ts";
import { minutesOfWater } from "../../water/minutesOfWater.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { solutionWater } from "./solutionWater.ts";
import { isBlank, type StoveFigures, stoveFigures } from "./stoveFigures.ts";

type HearthFigures = { readonly [K in keyof Hearth]: Figure<Hearth[K]> };

const atOnce = calculation<{ pots: number; onStove: number }, number>({
	key: "pots_at_once",
	label: say`Pots on the fire at once`,
	unit: say`pots`,
	formula: say`As many as stand on a stove, at most the pots there are.`,
	source: definition,
	inputs: {
		pots: { label: say`Pots for boiled water`, unit: say`pots`, min: 1 },
		onStove: { label: say`Pots on a stove at once`, unit: say`pots`, min: 1 },
	},
	example: { inputs: { pots: 4, onStove: 2 }, result: 2, within: 0 },
	compute: ({ pots, onStove }) => Math.min(pots, onStove),
});

const keeps = calculation<{ hours: number }, number>({
	key: "boiled_water_minutes",
	label: say`Boiled water may be used for`,
	unit: "min",
	formula: say`Hours × ${MINUTES_PER_HOUR}.`,
	source: definition,
	inputs: { hours: { label: say`Boiled water may be used for`, unit: "h", min: 0 } },
	example: { inputs: { hours: 24 }, result: 1440, within: 0 },
	compute: ({ hours }) => hours * MINUTES_PER_HOUR,
});

/** The stoves, pots and times with which this unit boils water. */
export function hearthFigures({ settings }: ReadWorkbook, stove: StoveFigures): HearthFigures {
	return {
		stoves: settings.stoves,
		pots: settings.pots,
		potsOnStove: potsAtOnce(settings),
		potLitres: settings.pot_litres,
		netKw: stove.netKw,
		drawnC: settings.tap_water_c,
		boilingC: stove.boilingC,
		holdMinutes: stove.holdMinutes,
		coolMinutes: stove.coolMinutes,
		keepsMinutes: derive(keeps, { hours: settings.boiled_water_hours }),
	};
}

/** Blank, all pots stand on the stove. */
export const potsAtOnce = memoizeByObject(
	({ pots, pots_on_stove }: ReadWorkbook["settings"]): Figure =>
		isBlank(pots_on_stove) ? pots : derive(atOnce, { pots, onStove: pots_on_stove }),
);

const litresOfLoad = calculation<{ buckets: number; each: number; solutionLitres: number }, number>(
	{
		key: "litres_of_load",
		label: say`Water for one load`,
		unit: "L",
		formula: say`Rinse buckets × litres in a bucket + boiled water for the solution.`,
		source: definition,
		inputs: {
			buckets: { label: say`Rinse buckets of boiled water`, unit: say`buckets/load`, min: 0 },
			each: { label: say`Boiled water in a bucket`, unit: "L", min: 0 },
			solutionLitres: { label: say`Boiled water for the solution`, unit: "L", min: 0 },
		},
		example: { inputs: { buckets: 3, each: 10, solutionLitres: 5.5 }, result: 35.5, within: 0 },
		compute: ({ buckets, each, solutionLitres }) => buckets * each + solutionLitres,
	},
);

/** Minutes from lighting a fire to cool water for one load and for the solution it soaks in. */
export function minutesOfLoad({ read }: UnitFigures): Figure {
	const { rinse_buckets: buckets, bucket_fill_litres: each } = read.settings;
	const { keepsMinutes: _, ...hearth } = hearthFigures(read, stoveFigures(read));
	const solutionLitres = solutionWater(read);
	const litres = derive(litresOfLoad, { buckets, each, solutionLitres });
	return derive(minutesOfWater, { litres, ...hearth });
}

/** How long a used kit waits for its water; undefined where water is boiled beforehand. */
export function minutesKitsWait(unit: UnitFigures): Figure | undefined {
	const { boil_for } = unit.read.settings;
	if (!boil_for.outcome.ok) return boil_for as Figure<never>;
	// Water in which pieces are boiled need not cool: its fire is a step of the round.
	const isRinsed = valueIn(unit.loads)?.some(({ method }) => method === "chlorine") ?? true;
	return isRinsed && boil_for.outcome.value === "after_use" ? minutesOfLoad(unit) : undefined;
}
