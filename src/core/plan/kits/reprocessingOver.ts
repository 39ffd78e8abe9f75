import { calculation, derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import type { AfterEachUse } from "../../kits/unmetAfterEachUse.ts";
import { valueIn } from "../../outcome.ts";
import { type Hands, handsAfterWater, handsOneByOne } from "../../rounds/handsOneByOne.ts";
import { minutesOf, type RoundLength } from "../../rounds/roundLength.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { inOrder } from "../../values/inOrder.ts";
import { byDate } from "../byDate.ts";
import type { DayDemand, KindOfDay } from "../dayDemand.ts";
import { isSentAway } from "../methods/readyLifeDaysOf.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { minutesKitsWait } from "../water/hearthFigures.ts";
import { amongOtherKinds, kindInQueue } from "./amongOtherKinds.ts";
import { backAfterEachUse } from "./backAfterEachUse.ts";
import { backFromAway, handsSendingAway } from "./backFromAway.ts";
import { backInRounds } from "./backInRounds.ts";
import type { KindFigures } from "./kindFigures.ts";
import { readyLifeOf, roundLengthOf, waterIsReady } from "./renewedOf.ts";
import { reprocessingOfForecast } from "./reprocessingOfForecast.ts";
import { byName } from "./together.ts";

/** Where each kind has its own kits, a round is as long as its fullest, whatever its kinds. */
const oneLength = calculation<{ minutes: number }, RoundLength>({
	key: "one_length",
	label: say`What makes a round long`,
	unit: "min",
	formula: say`With several kinds of kit every round counts as long as the fullest: kits of other kinds are in it too.`,
	source: commonPractice,
	inputs: {
		minutes: { label: say`Minutes until the kits of a round are ready`, unit: "min", min: 0 },
	},
	example: {
		inputs: { minutes: 110 },
		result: { perRound: 110, perKit: 0, loads: [] },
		within: 0,
	},
	compute: ({ minutes }) => ({ perRound: minutes, perKit: 0, loads: [] }),
});

/**
 * When the used kits of a kind come back at the earliest, for uses alone: kits that go out of
 * date are left out, and only they go by how long the plan counts a round. It needs no rounds
 * of the days: of several kinds every round is as long as one with a single kit, the shortest
 * that its fullest can be. Undefined where kits do not wait for rounds alone.
 */
export function usesComeBack(
	unit: UnitFigures,
	k: number,
	days: readonly DayDemand[],
): Figure<Reprocessing> | undefined {
	if (unit.afterEachUse || goesAway(unit.kinds[k] as KindFigures)) return undefined;
	const length = valueIn(roundLengthOf(unit));
	return length && reprocessingOver(unit, k, minutesOfRound(minutesOf(length, 1)), days);
}

const minutesOfRound = (minutes: number) =>
	nameFigure(say`Minutes until the kits of a round are ready`, minutes);

/** When the used kits of a kind come back, over the days of the plan. */
export function reprocessingOver(
	unit: UnitFigures,
	k: number,
	turnaround: Figure,
	days: readonly DayDemand[],
): Figure<Reprocessing> {
	const kind = unit.kinds[k] as KindFigures;
	const reprocessing = unit.afterEachUse
		? afterEachUse(unit, k, days)
		: inRounds(unit, kind, turnaround, usesOf(k, days));
	return withForecast(k, days, reprocessing);
}

const usesOf = (k: number, days: readonly DayDemand[]) =>
	byDate(say`Kits used, average`, say`kits`, days, (day) => (day.kinds[k] as KindOfDay).uses);

function goesAway({ treated }: KindFigures): boolean {
	const methods = valueIn(treated);
	return methods !== undefined && isSentAway(methods);
}

/** Who is there where kits are reprocessed after each use. */
export function handsOf(unit: UnitFigures): Figure<Hands> {
	const { workers_per_round: people, soak_alone: soakAlone } = unit.read.settings;
	const hands = derive(handsOneByOne, { steps: unit.steps, people, soakAlone });
	const waterMinutes = minutesKitsWait(unit);
	return waterMinutes ? derive(handsAfterWater, { hands, waterMinutes }) : hands;
}

/** The people are the same for all kinds. */
function afterEachUse(
	unit: UnitFigures,
	k: number,
	days: readonly DayDemand[],
): Figure<AfterEachUse> {
	const kind = unit.kinds[k] as KindFigures;
	const hands = handsOf(unit);
	const awayHours = unit.read.settings.autoclave_turnaround_hours;
	const reprocessing = derive(backAfterEachUse, {
		usesPerDay: usesOf(k, days),
		hourShares: unit.hourShares,
		hands: goesAway(kind) ? derive(handsSendingAway, { hands, awayHours }) : hands,
		readyLifeDays: kind.readyLifeDays,
	});
	if (unit.kinds.length === 1) return reprocessing;
	const all = unit.kinds.map(({ name, kitsInService, readyLifeDays }, i) => ({
		name,
		brings: derive(kindInQueue, { usesPerDay: usesOf(i, days), kitsInService, readyLifeDays }),
	}));
	// By name: sums of many go by their order in the last digits, and the order of rows decides nothing.
	const others = all.filter((_, i) => i !== k).sort((a, b) => inOrder(a.name, b.name));
	return derive(amongOtherKinds, {
		reprocessing,
		own: (all[k] as (typeof all)[0]).brings,
		others: gather(
			say`Other kinds of kit`,
			"",
			byName(others, ({ brings }) => brings),
		),
	});
}

function inRounds(
	unit: UnitFigures,
	kind: KindFigures,
	turnaround: Figure,
	usesPerDay: Figure<number[]>,
): Figure<Reprocessing> {
	const { timetable, hourShares } = unit;
	const { readyLifeDays } = kind;
	if (goesAway(kind))
		return derive(backFromAway, {
			starts: timetable.starts,
			roundMinutes: turnaround,
			awayHours: unit.read.settings.autoclave_turnaround_hours,
			usesPerDay,
			hourShares,
			readyLifeDays,
		});
	return derive(backInRounds, {
		starts: timetable.starts,
		length:
			unit.kinds.length === 1 ? roundLengthOf(unit) : derive(oneLength, { minutes: turnaround }),
		plannedMinutes: turnaround,
		usesPerDay,
		hourShares,
		life: readyLifeOf(unit, kind),
		waterMinutes: minutesKitsWait(unit) ?? waterIsReady,
	});
}

/** What a register leaves unknown of the births is unknown of the cover. */
function withForecast(
	k: number,
	days: readonly DayDemand[],
	reprocessing: Figure<Reprocessing>,
): Figure<Reprocessing> {
	const forecast = days.filter((day) => day.level);
	if (forecast.length === 0) return reprocessing;
	const levels = byDate(
		say`Births of each day, forecast`,
		say`births`,
		forecast,
		(day) => day.level as NonNullable<DayDemand["level"]>,
	);
	const sure = byDate(say`Kits used, not by the forecast`, say`kits`, days, (day) =>
		day.level ? noUses : (day.kinds[k] as KindOfDay).uses,
	);
	return derive(reprocessingOfForecast, { reprocessing, levels, sure });
}

const noUses = nameFigure(say`Kits used, not by the forecast`, 0);
