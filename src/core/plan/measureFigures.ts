import { derive, type Figure } from "../calculation.ts";
import { countTimes } from "../countTimes.ts";
import { say } from "../say.ts";
import type { Measure } from "../sheets/planMeasures.ts";
import { sources } from "../sources.ts";
import { vinegarExpected, vinegarSetAside } from "../vinegar/vinegarPerDescale.ts";
import type { CountFigures, Pair } from "./countFigures.ts";
import { groupOver } from "./store/useOfItem.ts";
import type { UnitFigures } from "./unitFigures.ts";

const loads = { label: say`Loads`, unit: say`loads` };
const preparations = { label: say`Preparations`, unit: say`preparations` };
const litresEach = { label: say`Litres of a preparation`, unit: "L" };
const bucketsEach = { label: say`Rinse buckets of boiled water`, unit: say`buckets/load` };
const bucketFill = { label: say`Boiled water in a bucket`, unit: "L" };
const buckets = { label: say`Buckets of boiled water`, unit: say`buckets` };

const solutionLitres = countTimes("solution_litres", say`Solution`, "L", preparations, litresEach);
const boiledBuckets = countTimes(
	"boiled_buckets",
	say`Boiled water`,
	say`buckets`,
	loads,
	bucketsEach,
	sources.threeRinses,
);
const boiledLitres = countTimes(
	"boiled_litres",
	say`Boiled water`,
	"L",
	buckets,
	bucketFill,
	sources.threeRinses,
);

/** Every measure of the plan, for one day or for the whole of it. */
export function measureFigures(
	unit: UnitFigures,
	litres: Figure,
	counts: CountFigures,
	boiled: Pair,
): Record<Measure, Pair> {
	const { settings } = unit.read;
	const { roundsThatRun: rounds } = counts;
	const vinegar = {
		everyRounds: settings.descale_every_rounds,
		litresEach: unit.vinegarPerDescale,
	};
	return {
		births: counts.births,
		kits_used: counts.kitsUsed,
		kits_expired: counts.kitsExpired,
		kits_to_reprocess: counts.kitsToReprocess,
		rounds,
		solution_litres: times(solutionLitres, counts.preparations, litres),
		chlorine: counts.product,
		boiled_litres: litresOfLoads(unit, boiled),
		boiled_buckets: times(boiledBuckets, boiled, settings.rinse_buckets),
		vinegar_litres: {
			expected: derive(vinegarExpected, { ...vinegar, rounds: rounds.expected }),
			setAside: derive(vinegarSetAside, { ...vinegar, rounds: rounds.setAside }),
		},
		gauze_pieces: groupOver(unit, "gauze", counts.rounds),
	};
}

/** Boiled water for some loads. */
export function litresOfLoads({ read: { settings } }: UnitFigures, loadsOfWater: Pair): Pair {
	const pair = times(boiledBuckets, loadsOfWater, settings.rinse_buckets);
	return times(boiledLitres, pair, settings.bucket_fill_litres);
}

function times(
	product: ReturnType<typeof countTimes>,
	{ expected, setAside }: Pair,
	each: Figure,
): Pair {
	return {
		expected: derive(product, { count: expected, each }),
		setAside: derive(product, { count: setAside, each }),
	};
}
