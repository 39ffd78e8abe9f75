import { fixed } from "../../fixed.ts";
import type { InSteps } from "../../inSteps.ts";
import { memoize } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import { advice, type Problem, problem } from "../../problem.ts";
import { say } from "../../say.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../../values/clock.ts";
import { batchesOf, type Hearth, type WaterNeed } from "../../water/batch.ts";
import { type WaterLevers, waterLevers } from "../../water/waterLevers.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { FiresOfPlan } from "./firesOfPlan.ts";
import { hearthFigures } from "./hearthFigures.ts";

/** Looked at before and after the first round without water, in days: longer plans repeat themselves. */
const DAYS_AROUND = 5;

/** Codes of these problems. */
export const notInTimeCodes: readonly string[] = [
	"cooling-too-long",
	"heating-over-a-day",
	"pots-booked-twice",
	"stove-booked-twice",
];

/** An edit elsewhere leaves them as they were. */
const leversOf = memoize(waterLevers, (...of) => [JSON.stringify(of)]);

/** Rounds whose water cannot be cool in time: why, with the figures, and what would help, the cheapest first. */
export function waterNotInTime(unit: UnitFigures, { made }: InSteps<FiresOfPlan>): Problem[] {
	const { schedule, needs, stove, rounds } = made;
	const all = valueIn(schedule)?.without ?? [];
	const without = all.filter((need) => !needs[need]?.isForPieces);
	const [first] = without;
	const ofPieces = piecesWithoutFire(
		unit,
		needs,
		all.filter((need) => needs[need]?.isForPieces),
	);
	if (first === undefined) return ofPieces;
	// Fires are only known where all this is.
	const hearth = hearthIn(hearthFigures(unit.read, stove));
	const bucketLitres = valueIn(unit.read.settings.bucket_fill_litres) as number;
	const at = (needs[first] as WaterNeed).from;
	const around = needs.filter(({ from }) => Math.abs(from - at) <= DAYS_AROUND * MINUTES_PER_DAY);
	const levers = leversOf(around, hearth, bucketLitres);
	const { code, column, message } = reason(needs[first] as WaterNeed, hearth, levers);
	// Where fires are lit only when they are needed, all of them at once need not come.
	const said = valueIn(unit.read.settings.boil_for) === "every_round" ? problem : advice;
	return [
		...ofPieces,
		said(
			{ file: "unit.csv", line: null, column },
			{
				code,
				received: say`no water in time for ${without.length} of ${rounds.length} rounds`,
				allowed:
					levers.pots === undefined
						? say`water in time for every round`
						: say`at least ${levers.pots} pots`,
				message: [
					say`For ${without.length} of ${rounds.length} rounds the boiled water cannot be cool in time.`,
					message,
					...leverWords(levers),
				].join(" "),
			},
		),
	];
}

/** Loads of pieces keep their hour, so only each other can take their place. */
function piecesWithoutFire(
	{ read: { settings } }: UnitFigures,
	needs: readonly WaterNeed[],
	without: readonly number[],
): Problem[] {
	const loads = needs.filter(({ isForPieces }) => isForPieces).length;
	if (without.length === 0) return [];
	const [stoves, pots] = [valueIn(settings.stoves) as number, valueIn(settings.pots) as number];
	const isPot = pots <= stoves;
	return [
		advice(
			{ file: "unit.csv", line: null, column: isPot ? "pots" : "stoves" },
			{
				code: isPot ? "pots-booked-twice" : "stove-booked-twice",
				received: say`no fire for ${without.length} of ${loads} loads of pieces`,
				allowed: say`a stove and a pot for every load of pieces at its hour`,
				message: say`For ${without.length} of ${loads} loads of pieces to boil or steam no stove or no pot is free at the hour at which the steps of the round need it: the round lasts longer than planned. Stoves: ${stoves}; pots: ${pots}. Give the heating a step of its own, as long as it takes, so that the loads follow each other; or boil more kits at once; or take another stove and pot.`,
			},
		),
	];
}

function hearthIn(figures: ReturnType<typeof hearthFigures>): Hearth {
	const values = Object.entries(figures).map(([key, figure]) => [key, valueIn(figure)] as const);
	return Object.fromEntries(values) as unknown as Hearth;
}

const hours = (minutes: number) => fixed(minutes / MINUTES_PER_HOUR, 1);

function reason(need: WaterNeed, hearth: Hearth, levers: WaterLevers) {
	const { coolMinutes, keepsMinutes, pots, stoves } = hearth;
	const batches = batchesOf(need, 0, hearth);
	const onStove = batches.reduce((sum, { stoveMinutes }) => sum + stoveMinutes, 0);
	if (coolMinutes + need.until - need.from >= keepsMinutes)
		return {
			code: "cooling-too-long",
			column: "boiled_water_hours",
			message: say`It takes ${hours(coolMinutes)} h to cool and may be used for ${hours(keepsMinutes)} h after the boil.`,
		};
	if (onStove > MINUTES_PER_DAY)
		return {
			code: "heating-over-a-day",
			column: "boil_minutes_measured",
			message: say`Bringing the water of one round to the boil takes ${hours(onStove)} h, longer than a day.`,
		};
	const taken = Math.max(...batches.map(({ potMinutes }) => potMinutes));
	if (levers.pots !== undefined)
		return {
			code: "pots-booked-twice",
			column: "pots",
			message: say`Pots: ${pots}; one filling keeps a pot for ${hours(taken)} h, with heating, hold and cooling.`,
		};
	return {
		code: "stove-booked-twice",
		column: "stoves",
		message: say`Stoves: ${stoves}; the water of one round keeps a stove for ${hours(onStove)} h.`,
	};
}

/** What would do by itself; what costs nothing first. */
function leverWords(levers: WaterLevers): string[] {
	const { bucketLitres, coolMinutes, pots, stoves, eveningPots } = levers;
	const words = [
		bucketLitres !== undefined && say`Buckets of ${bucketLitres} L would do, if a load still fits.`,
		coolMinutes !== undefined &&
			say`Cooling within ${hours(coolMinutes)} h would do: stand the closed pot in cold water and measure it.`,
		pots !== undefined && say`The fewest pots that would do: ${pots}.`,
		stoves !== undefined && say`The fewest stoves that would do: ${stoves}.`,
		eveningPots !== undefined &&
			say`Boiling in one evening for the whole next day takes ${eveningPots} pots or covered vessels.`,
	].filter((each) => each !== false);
	return words.length > 0
		? words
		: [
				say`One change alone is not enough: less water, quicker cooling, more pots and stoves together.`,
			];
}
