import { derive, type Figure } from "../calculation.ts";
import type { Counts } from "../counts/counts.ts";
import { expectedOf, setAsideOf } from "../counts/measures.ts";
import { countTimes } from "../quantities.ts";
import { say } from "../say.ts";
import type { Measure } from "../sheets/planMeasures.ts";
import { sources } from "../sources.ts";
import { vinegarExpected, vinegarSetAside } from "../vinegar/vinegarPerDescale.ts";
import type { CountFigures, Pair } from "./countFigures.ts";
import { groupOver } from "./store/supplyFigures.ts";
import type { UnitFigures } from "./unitFigures.ts";

const roundsExpected = expectedOf("rounds_expected", say`Rounds that run`, say`rounds`);
const roundsSetAside = setAsideOf("rounds_set_aside", say`Rounds that run`, say`rounds`);
const loadsExpected = expectedOf("loads_expected", say`Loads`, say`loads`);
const loadsSetAside = setAsideOf("loads_set_aside", say`Loads`, say`loads`);
const preparationsExpected = expectedOf(
	"preparations_expected",
	say`Preparations`,
	say`preparations`,
);
const preparationsSetAside = setAsideOf(
	"preparations_set_aside",
	say`Preparations`,
	say`preparations`,
);

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
): Record<Measure, Pair> {
	const { settings } = unit.read;
	const confidence = settings.plan_confidence;
	const rounds = pair(counts.roundCounts, roundsExpected, roundsSetAside, confidence);
	const loadPair = pair(counts.loadCounts, loadsExpected, loadsSetAside, confidence);
	const made = pair(
		counts.preparationCounts,
		preparationsExpected,
		preparationsSetAside,
		confidence,
	);
	const bucketPair = times(boiledBuckets, loadPair, settings.rinse_buckets);
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
		solution_litres: times(solutionLitres, made, litres),
		chlorine: counts.product,
		boiled_litres: times(boiledLitres, bucketPair, settings.bucket_fill_litres),
		boiled_buckets: bucketPair,
		vinegar_litres: {
			expected: derive(vinegarExpected, { ...vinegar, rounds: rounds.expected }),
			setAside: derive(vinegarSetAside, { ...vinegar, rounds: rounds.setAside }),
		},
		gauze_pieces: groupOver(unit, "gauze", counts.rounds),
	};
}

function pair(
	counts: Figure<Counts>,
	expected: ReturnType<typeof expectedOf>,
	setAside: ReturnType<typeof setAsideOf>,
	confidence: Figure,
): Pair {
	return {
		expected: derive(expected, { counts }),
		setAside: derive(setAside, { counts, confidence }),
	};
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
