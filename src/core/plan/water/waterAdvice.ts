import { fixed } from "../../fixed.ts";
import { problemsOf, valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import { say } from "../../say.ts";
import { MINUTES_PER_HOUR } from "../../values/clock.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { minutesKitsWait } from "./hearthFigures.ts";
import { isBlank, stoveFigures } from "./stoveFigures.ts";
import { waterNotInTime } from "./waterNotInTime.ts";

/**
 * What the reader should know about boiled water. The rest of the plan does not wait for
 * the stove: something impossible is a problem of the fires alone.
 */
export function waterAdvice(unit: UnitFigures, { fires }: PlanTables): Problem[] {
	const { boilingC, netKw, coolMinutes } = stoveFigures(unit.read);
	return [
		...[boilingC, netKw, coolMinutes]
			.flatMap(({ outcome }) => problemsOf(outcome))
			.map(
				(found): Problem => (found.code === "not-given" ? { ...found, weight: "advice" } : found),
			),
		...heatEstimated(unit),
		...boiledAfterUse(unit),
		...bucketsForOneKit(unit),
		...waterNotInTime(unit, fires),
	];
}

/** Times by an estimate of the fire are better than none, and are said to be that. */
function heatEstimated({ read: { settings } }: UnitFigures): Problem[] {
	const { heat_kw: heat, boil_minutes_measured: measured } = settings;
	if (!isBlank(heat) || !isBlank(measured)) return [];
	return [
		advice(
			{ file: "unit.csv", line: null, column: "boil_minutes_measured" },
			{
				code: "heat-estimated",
				received: "",
				allowed: say`minutes that a full pot takes to boil`,
				message: say`The times of the fires go by an estimate for the fuel. Measure once how long a full pot takes to boil, and enter the minutes.`,
			},
		),
	];
}

/** A kit that waits for a fire comes back later than one whose water is ready. */
function boiledAfterUse(unit: UnitFigures): Problem[] {
	const wait = minutesKitsWait(unit);
	const minutes = wait && valueIn(wait);
	if (minutes === undefined) return [];
	const hours = fixed(minutes / MINUTES_PER_HOUR, 1);
	return [
		advice(
			{ file: "unit.csv", line: null, column: "boil_for" },
			{
				code: "boiled-after-use",
				received: "after_use",
				allowed: unit.afterEachUse ? "standing" : "every_round",
				message: unit.afterEachUse
					? say`The fire is lit once a used kit waits, and the kit is ready ${hours} h later than if cooled water stood ready. With “to stand ready” it does. Your protocol decides.`
					: say`The fire is lit once a used kit waits: a kit used less than ${hours} h before a round waits for the next one. With “for every round” the water of each round is boiled whether or not it runs. Your protocol decides.`,
			},
		),
	];
}

/** As small as a rinse bucket for one kit is taken to be, L. */
const SMALL_BUCKET = 5;
const LARGE_BUCKET = 10;

/** Where a load holds one kit, less water does, and so fewer pots and less fuel. */
function bucketsForOneKit({ kitsInLoad, read: { settings } }: UnitFigures): Problem[] {
	const litres = valueIn(settings.bucket_fill_litres);
	if (valueIn(kitsInLoad) !== 1 || litres === undefined || litres < LARGE_BUCKET) return [];
	return [
		advice(
			{ file: "unit.csv", line: null, column: "bucket_fill_litres" },
			{
				code: "buckets-for-one-kit",
				received: say`${litres} L`,
				allowed: say`for example ${SMALL_BUCKET} L`,
				message: say`A load holds one kit, and each rinse bucket is filled with ${litres} L. Where the kit can be moved under water in less, for example ${SMALL_BUCKET} L, less has to be boiled and cooled.`,
			},
		),
	];
}
