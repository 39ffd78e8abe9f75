import { calculation, derive, type Figure } from "../../calculation.ts";
import { type Cover, kitCover, kitsNeeded } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { minutesOneByOne } from "../../rounds/handsOneByOne.ts";
import { roundMinutes } from "../../rounds/roundMinutes.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { roundsByDate } from "../byDate.ts";
import type { DayDemand } from "../dayDemand.ts";
import { kitsOfFullestRound, turnaroundMinutes } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { KindFigures } from "./kindFigures.ts";
import { roundLengthOf } from "./renewedOf.ts";
import { handsOf, reprocessingOver } from "./reprocessingOver.ts";
import { together } from "./together.ts";

export interface KindCover {
	readonly name: string;
	readonly kitsInService: Figure;
	readonly reprocessing: Figure<Reprocessing>;
	readonly cover: Figure<Cover>;
	readonly kitsNeeded: Figure;
}

export interface CoverFigures {
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

/** How many kits the unit needs, over the days of the plan. @param rounds of the days, where the unit does others than they have */
export function coverFigures(
	unit: UnitFigures,
	days: readonly DayDemand[],
	rounds: Figure<RoundsOfDay[]> = roundsByDate(days),
): CoverFigures {
	const kits = unit.afterEachUse ? derive(oneKit, {}) : kitsOfFullest(unit, rounds);
	const turnaround = turnaroundWith(unit, kits, rounds);
	const kinds = unit.kinds.map((kind, k) =>
		coverOfKind(unit, kind, reprocessingOver(unit, k, turnaround, days)),
	);
	return {
		turnaround,
		kinds,
		get kitsNeeded() {
			return together(kinds, say`Kits needed`, say`kits`, (kind) => kind.kitsNeeded);
		},
	};
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

function kitsOfFullest(unit: UnitFigures, days: Figure<RoundsOfDay[]>): Figure {
	return derive(kitsOfFullestRound, {
		days,
		confidence: unit.read.settings.plan_confidence,
		kitsInService: unit.kitsInService,
	});
}

function turnaroundWith(unit: UnitFigures, kits: Figure, days: Figure<RoundsOfDay[]>): Figure {
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
		days,
		confidence: unit.read.settings.plan_confidence,
		kitsInService: unit.kitsInService,
	});
}
