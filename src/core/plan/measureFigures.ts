import { derive, type Figure, gather } from "../calculation.ts";
import { countTimes } from "../countTimes.ts";
import { say } from "../say.ts";
import type { Measure } from "../sheets/planMeasures.ts";
import { sources } from "../sources.ts";
import { total } from "../total.ts";
import { vinegarExpected, vinegarSetAside } from "../vinegar/vinegarPerDescale.ts";
import type { CountFigures, Pair } from "./countFigures.ts";
import { noNeed } from "./methods/noNeed.ts";
import { groupOver } from "./store/groupOver.ts";
import type { UnitFigures } from "./unitFigures.ts";
import { isMixedWithBoiled, solutionWater } from "./water/solutionWater.ts";

const loads = { label: say`Loads`, unit: say`loads` };
const preparations = { label: say`Preparations`, unit: say`preparations` };
const litresEach = { label: say`Litres of a preparation`, unit: "L" };
const bucketsEach = { label: say`Rinse buckets of boiled water`, unit: say`buckets/load` };
const bucketFill = { label: say`Boiled water in a bucket`, unit: "L" };
const buckets = { label: say`Buckets of boiled water`, unit: say`buckets` };

const solutionLitres = countTimes("solution_litres", say`Solution`, "L", preparations, litresEach);
const solutionBoiled = countTimes(
	"boiled_solution_litres",
	say`Boiled water for the solution`,
	"L",
	preparations,
	{ label: say`Boiled water for the solution`, unit: "L" },
	sources.soakStrength,
);
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

const piecesLitres = countTimes("pieces_litres", say`Water to boil or steam pieces`, "L", loads, {
	label: say`Water for a load`,
	unit: "L",
});
const allBoiled = total("all_boiled", say`Boiled water`, "L");

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
		boiled_litres: litresBoiled(unit, counts, boiled),
		boiled_buckets: counts.loads.chlorine
			? times(boiledBuckets, boiled, settings.rinse_buckets)
			: noNeed("boiled_buckets", buckets, unit.treated),
		vinegar_litres: {
			expected: derive(vinegarExpected, { ...vinegar, rounds: rounds.expected }),
			setAside: derive(vinegarSetAside, { ...vinegar, rounds: rounds.setAside }),
		},
		gauze_pieces: groupOver(unit, "gauze", counts.rounds),
	};
}

/**
 * Water to boil: for the rinse, and that in which pieces are boiled or over which they are steamed.
 *
 * @param rinsed loads of rinse water
 */
export function litresBoiled(unit: UnitFigures, counts: CountFigures, rinsed: Pair): Pair {
	const { settings } = unit.read;
	const { chlorine, boiling, steam } = counts.loads;
	const rinse = () =>
		times(
			boiledLitres,
			times(boiledBuckets, rinsed, settings.rinse_buckets),
			settings.bucket_fill_litres,
		);
	const parts: Record<string, Pair> = {
		...(chlorine && { rinse: rinse() }),
		...(isMixedWithBoiled(unit.read) && {
			solution: times(solutionBoiled, counts.preparations, solutionWater(unit.read)),
		}),
		...(boiling && { boiling: times(piecesLitres, boiling, settings.disinfect_boil_litres) }),
		...(steam && { steam: times(piecesLitres, steam, settings.steam_litres) }),
	};
	const [only, ...others] = Object.values(parts);
	if (!only) return noNeed("boiled_litres", { label: boiledLitres.label, unit: "L" }, unit.treated);
	if (others.length === 0) return only;
	const all = (part: keyof Pair) =>
		derive(allBoiled, {
			parts: gather(
				boiledLitres.label,
				"L",
				Object.fromEntries(Object.entries(parts).map(([name, pair]) => [name, pair[part]])),
			),
		});
	return { expected: all("expected"), setAside: all("setAside") };
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
