import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type Cover, kitCover, kitsNeeded } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { valueIn } from "../../outcome.ts";
import {
	type Hands,
	handsAfterWater,
	handsOneByOne,
	minutesOneByOne,
} from "../../rounds/handsOneByOne.ts";
import type { RoundLength } from "../../rounds/roundLength.ts";
import { roundMinutes } from "../../rounds/roundMinutes.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { byDate, roundsByDate } from "../byDate.ts";
import type { DayDemand, KindOfDay } from "../dayDemand.ts";
import type { DayFigures } from "../dayFigures.ts";
import { isSentAway } from "../methods/readyLifeDaysOf.ts";
import { kitsOfFullestRound, turnaroundMinutes } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { minutesKitsWait } from "../water/hearthFigures.ts";
import { backAfterEachUse } from "./backAfterEachUse.ts";
import { backFromAway, handsSendingAway } from "./backFromAway.ts";
import { backInRounds } from "./backInRounds.ts";
import type { KindFigures } from "./kindFigures.ts";
import { readyLifeOf, roundLengthOf, waterIsReady } from "./renewedOf.ts";
import { reprocessingOfForecast } from "./reprocessingOfForecast.ts";
import { together } from "./together.ts";

export interface KindCover {
	readonly name: string;
	readonly kitsInService: Figure;
	readonly reprocessing: Figure<Reprocessing>;
	readonly cover: Figure<Cover>;
	readonly kitsNeeded: Figure;
}

export interface CoverFigures {
	readonly kitsOfFullestRound: Figure;
	readonly turnaround: Figure;
	/** Each kind of kit apart, in the order of the unit's kinds. */
	readonly kinds: readonly KindCover[];
	/** Kits of all kinds together. */
	readonly kitsNeeded: Figure;
}

const oneKit = calculation<object, number>({
	key: "one_kit",
	label: say`Kits in the round`,
	unit: say`kits`,
	formula: say`After each use, every kit is a round of its own.`,
	source: commonPractice,
	inputs: {},
	example: { inputs: {}, result: 1, within: 0 },
	compute: () => 1,
});

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

/** How many kits the unit needs, over the days of the plan. */
export function coverFigures(unit: UnitFigures, days: readonly DayFigures[]): CoverFigures {
	const kits = unit.afterEachUse ? derive(oneKit, {}) : kitsOfFullest(unit, days);
	const turnaround = turnaroundWith(unit, kits, days);
	const kinds = unit.kinds.map((kind, k) =>
		coverOfKind(unit, kind, reprocessingOver(unit, k, turnaround, days)),
	);
	return {
		kitsOfFullestRound: kits,
		turnaround,
		kinds,
		get kitsNeeded() {
			return together(kinds, say`Kits needed`, say`kits`, (kind) => kind.kitsNeeded);
		},
	};
}

/**
 * When the used kits of a unit with one kind come back, for uses alone: kits that go out of
 * date are left out, and only they go by how long the plan counts a round. It needs no rounds
 * of the days. Undefined where more than that goes by a round's minutes.
 */
export function usesComeBack(
	unit: UnitFigures,
	days: readonly DayDemand[],
): Figure<Reprocessing> | undefined {
	const [only, ...others] = unit.kinds;
	if (!only || others.length > 0 || unit.afterEachUse || goesAway(only)) return undefined;
	return reprocessingOver(unit, 0, noMinutes, days);
}

const noMinutes = nameFigure(say`Minutes until the kits of a round are ready`, 0);

function reprocessingOver(
	unit: UnitFigures,
	k: number,
	turnaround: Figure,
	days: readonly DayDemand[],
): Figure<Reprocessing> {
	const usesPerDay = byDate(
		say`Kits used, average`,
		say`kits`,
		days,
		(day) => (day.kinds[k] as KindOfDay).uses,
	);
	const kind = unit.kinds[k] as KindFigures;
	return withForecast(k, days, reprocessingOf(unit, kind, turnaround, usesPerDay));
}

function goesAway({ treated }: KindFigures): boolean {
	const methods = valueIn(treated);
	return methods !== undefined && isSentAway(methods);
}

/** How many kits are enough is worked out when it is asked: of many changes tried, few are shown. */
function coverOfKind(
	unit: UnitFigures,
	{ name, kitsInService, deliveryBeds, spareKits }: KindFigures,
	reprocessing: Figure<Reprocessing>,
): KindCover {
	let cover: Figure<Cover> | undefined;
	return {
		name,
		kitsInService,
		reprocessing,
		get cover() {
			cover ??= derive(kitCover, {
				reprocessing,
				unmetAllowed: unit.read.settings.unmet_per_1000_uses,
				deliveryBeds,
				spareKits,
			});
			return cover;
		},
		get kitsNeeded() {
			return derive(kitsNeeded, { cover: this.cover });
		},
	};
}

function kitsOfFullest(unit: UnitFigures, days: readonly DayFigures[]): Figure {
	return derive(kitsOfFullestRound, {
		days: roundsByDate(days),
		confidence: unit.read.settings.plan_confidence,
		kitsInService: unit.kitsInService,
	});
}

function turnaroundWith(unit: UnitFigures, kits: Figure, days: readonly DayFigures[]): Figure {
	if (unit.afterEachUse) return derive(minutesOneByOne, { hands: handsOf(unit) });
	const minutes = derive(roundMinutes, {
		steps: unit.steps,
		kits,
		workers: unit.read.settings.workers_per_round,
		loads: unit.loads,
	});
	return derive(turnaroundMinutes, {
		minutes,
		length: roundLengthOf(unit),
		rounds: unit.timetable.rounds,
		days: roundsByDate(days),
		confidence: unit.read.settings.plan_confidence,
		kitsInService: unit.kitsInService,
	});
}

function handsOf(unit: UnitFigures): Figure<Hands> {
	const { workers_per_round: people, soak_alone: soakAlone } = unit.read.settings;
	const hands = derive(handsOneByOne, { steps: unit.steps, people, soakAlone });
	const waterMinutes = minutesKitsWait(unit);
	return waterMinutes ? derive(handsAfterWater, { hands, waterMinutes }) : hands;
}

function reprocessingOf(
	unit: UnitFigures,
	kind: KindFigures,
	turnaround: Figure,
	usesPerDay: Figure<number[]>,
): Figure<Reprocessing> {
	const { timetable, hourShares } = unit;
	const { readyLifeDays } = kind;
	const sent = goesAway(kind);
	const awayHours = unit.read.settings.autoclave_turnaround_hours;
	if (unit.afterEachUse) {
		const hands = handsOf(unit);
		return derive(backAfterEachUse, {
			usesPerDay,
			hourShares,
			hands: sent ? derive(handsSendingAway, { hands, awayHours }) : hands,
			readyLifeDays,
		});
	}
	if (sent)
		return derive(backFromAway, {
			starts: timetable.starts,
			roundMinutes: turnaround,
			awayHours,
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
