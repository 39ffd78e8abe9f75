import { calculation, derive, type Figure } from "../../calculation.ts";
import { type Cover, kitCover, kitsNeeded } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/unmetPer1000.ts";
import { DayClock, flatDay, type HourShares } from "../../rounds/dayClock.ts";
import { roundMinutes } from "../../rounds/roundMinutes.ts";
import { say } from "../../say.ts";
import { commonPractice, sources } from "../../sources.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import { byDate, roundsByDate } from "../byDate.ts";
import type { DayFigures, KindOfDay } from "../dayFigures.ts";
import { kitsOfFullestRound, turnaroundMinutes } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";
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

interface InRounds {
	readonly starts: readonly number[];
	readonly turnaround: number;
	readonly usesPerDay: readonly number[];
	readonly hourShares: HourShares;
}

const inRounds = calculation<InRounds, Reprocessing>({
	key: "back_in_rounds",
	label: say`When used kits come back`,
	unit: "",
	formula: say`Kits used before a round begins are ready when it ends. The plan's rounds are gone through one by one, the last day's uses going on past its midnight.`,
	source: sources.palm,
	inputs: {
		starts: { label: say`Rounds start at`, unit: say`minutes after midnight` },
		turnaround: { label: say`Minutes until the kits of a round are ready`, unit: "min", min: 0 },
		usesPerDay: { label: say`Kits used, expected`, unit: say`kits/day` },
		hourShares: { label: say`Births through the day`, unit: say`share of each hour` },
	},
	example: {
		inputs: { starts: [420, 1140], turnaround: 110, usesPerDay: [0.6], hourShares: flatDay },
		result: {
			kind: "in_rounds",
			starts: [420, 1140, 1440 + 420],
			turnaround: 110,
			uses: new DayClock([0.6], flatDay),
		},
		within: 0,
	},
	compute: ({ starts, turnaround, usesPerDay, hourShares }) => {
		const days = usesPerDay.map((_, day) => day * MINUTES_PER_DAY);
		const all = days.flatMap((midnight) => starts.map((start) => midnight + start));
		const after = days.length * MINUTES_PER_DAY + (starts[0] as number);
		return {
			kind: "in_rounds",
			starts: [...all, after],
			turnaround,
			uses: new DayClock(usesPerDay, hourShares),
		};
	},
});

const afterEachUse = calculation<Pick<InRounds, "turnaround" | "usesPerDay">, Reprocessing>({
	key: "back_after_each_use",
	label: say`When used kits come back`,
	unit: "",
	formula: say`Each kit is ready again after the minutes of a round with one kit.`,
	source: sources.palm,
	inputs: {
		turnaround: { label: say`Minutes of a round`, unit: "min", min: 0 },
		usesPerDay: { label: say`Kits used, expected`, unit: say`kits/day` },
	},
	example: {
		inputs: { turnaround: 110, usesPerDay: [0.6] },
		result: { kind: "after_each_use", turnaround: 110, usesPerDay: [0.6] },
		within: 0,
	},
	compute: ({ turnaround, usesPerDay }) => ({ kind: "after_each_use", turnaround, usesPerDay }),
});

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

/** How many kits the unit needs, over the days of the plan. */
export function coverFigures(unit: UnitFigures, days: readonly DayFigures[]): CoverFigures {
	const kits = unit.afterEachUse ? derive(oneKit, {}) : kitsOfFullest(unit, days);
	const turnaround = turnaroundWith(unit, kits);
	const kinds = unit.kinds.map((kind, k) => {
		const usesPerDay = byDate(
			say`Kits used, expected`,
			say`kits`,
			days,
			(day) => (day.kinds[k] as KindOfDay).uses,
		);
		const reprocessing = reprocessingOf(unit, turnaround, usesPerDay);
		const cover = coverOf(unit, reprocessing);
		const { name, kitsInService } = kind;
		return { name, kitsInService, reprocessing, cover, kitsNeeded: derive(kitsNeeded, { cover }) };
	});
	return {
		kitsOfFullestRound: kits,
		turnaround,
		kinds,
		kitsNeeded: together(kinds, say`Kits needed`, say`kits`, (kind) => kind.kitsNeeded),
	};
}

function kitsOfFullest(unit: UnitFigures, days: readonly DayFigures[]): Figure {
	return derive(kitsOfFullestRound, {
		days: roundsByDate(days),
		confidence: unit.read.settings.plan_confidence,
		kitsInService: unit.kitsInService,
	});
}

function turnaroundWith(unit: UnitFigures, kits: Figure): Figure {
	const minutes = derive(roundMinutes, {
		steps: unit.steps,
		kits,
		workers: unit.read.settings.workers_per_round,
		kitsInLoad: unit.kitsInLoad,
	});
	if (unit.afterEachUse) return minutes;
	return derive(turnaroundMinutes, { minutes, rounds: unit.timetable.rounds });
}

function reprocessingOf(unit: UnitFigures, turnaround: Figure, usesPerDay: Figure<number[]>) {
	if (unit.afterEachUse) return derive(afterEachUse, { turnaround, usesPerDay });
	const { timetable, hourShares } = unit;
	return derive(inRounds, { starts: timetable.starts, turnaround, usesPerDay, hourShares });
}

function coverOf({ read: { settings } }: UnitFigures, reprocessing: Figure<Reprocessing>) {
	return derive(kitCover, {
		reprocessing,
		unmetAllowed: settings.unmet_per_1000_uses,
		deliveryBeds: settings.delivery_beds,
		spareKits: settings.spare_kits,
	});
}
