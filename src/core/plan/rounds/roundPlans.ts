import { calculation, derive, type Figure } from "../../calculation.ts";
import { confidenceInput } from "../../counts/setAsideOf.ts";
import { setAsideOfSome } from "../../counts/setAsideOfSome.ts";
import { memoized } from "../../memoize.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { inTime } from "../../record/kitState.ts";
import { Refusal } from "../../refusal.ts";
import { type Loads, soaks } from "../../rounds/loads.ts";
import { oneRound, type RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { kitsOfRound } from "../../rounds/roundsThatRun.ts";
import type { Step } from "../../rounds/step.ts";
import { type TimedStep, timedSteps } from "../../rounds/timedSteps.ts";
import { say } from "../../say.ts";
import type { RoundsRow } from "../../sheets/rounds.ts";
import { commonPractice } from "../../source.ts";
import type { IsoDate } from "../../values/date.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { DescalingsDue } from "./descalingsDue.ts";
import { gapsBetween, tooLong } from "./turnaroundMinutes.ts";

/** One round of one day, by the clock. */
export interface RoundPlan {
	readonly date: IsoDate;
	readonly round: GoodRow<RoundsRow>;
	readonly steps: Figure<readonly TimedStep[]>;
}

interface Inputs {
	readonly steps: readonly Step[];
	readonly kitsInRounds: RoundsOfDay;
	readonly kitsInService: number;
	readonly confidence: number;
	readonly workers: number;
	readonly loads: Loads;
	readonly rounds: readonly GoodRow<RoundsRow>[];
	readonly index: number;
	readonly descaleMinutes: number;
	readonly rinseMinutes: number;
	readonly settleMinutes: number;
}

/** The steps of a round with their times, for the kits set aside for it; it must end before the next begins. */
const roundByTheClock = calculation<Inputs, readonly TimedStep[]>({
	key: "steps_of_round",
	label: say`Steps of the round by the clock`,
	unit: "",
	formula: say`One step after the other from the start of the round, for the kits it prepares for: at least one, at most the kits in service. Steps counted by load come once a load. Chlorine is opened only when vinegar is rinsed off, and so early that a powder has settled.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of a round`, unit: "min" },
		kitsInRounds: { label: say`Kits in each round, average`, unit: say`kits` },
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		confidence: confidenceInput,
		workers: { label: say`People in a round`, unit: say`people`, min: 1 },
		loads: { label: say`Kits in one load of each method`, unit: say`kits` },
		rounds: { label: say`Rounds of the day`, unit: "" },
		index: { label: say`Which round`, unit: "" },
		descaleMinutes: {
			label: say`Time in the descaling bath, 0 where none is due`,
			unit: "min",
			min: 0,
		},
		rinseMinutes: { label: say`Rinse and drain after vinegar`, unit: "min", min: 0 },
		settleMinutes: {
			label: say`The solution settles for, 0 where it has no deposit`,
			unit: "min",
			min: 0,
		},
	},
	example: {
		// A mean of 3 kits sets 6 aside and 4 are in service: 15 min × 4 kits ÷ 2 people, then one soak.
		inputs: {
			steps: [
				{ step: "wash", basis: "kit", minutes: 15, hands_on: "yes" },
				{ step: "soak", basis: "load", minutes: 20, hands_on: "no" },
			],
			kitsInRounds: oneRound(3),
			kitsInService: 4,
			confidence: 0.95,
			workers: 2,
			loads: soaks(4),
			rounds: [{ line: 2, value: { start: 420, label: "" } }],
			index: 0,
			descaleMinutes: 0,
			rinseMinutes: 10,
			settleMinutes: 0,
		},
		result: [
			{ step: "wash", startsAt: 420, endsAt: 450, handsOn: "yes", kits: 4, load: 0, method: null },
			{
				step: "soak",
				startsAt: 450,
				endsAt: 470,
				handsOn: "no",
				kits: 4,
				load: 1,
				method: "chlorine",
			},
		],
		within: 0,
	},
	compute: ({
		steps,
		kitsInRounds,
		kitsInService,
		confidence,
		workers,
		loads,
		rounds,
		index,
		settleMinutes,
		...descale
	}) => {
		const round = rounds[index] as GoodRow<RoundsRow>;
		const timed = timedSteps(steps, {
			start: round.value.start,
			kits: Math.max(
				1,
				Math.min(setAsideOfSome(kitsOfRound(kitsInRounds, index), confidence), kitsInService),
			),
			workers,
			loads,
			descale:
				descale.descaleMinutes > 0
					? { minutes: descale.descaleMinutes, rinseMinutes: descale.rinseMinutes }
					: null,
			settleMinutes,
		});
		const has = gapsBetween(rounds.map(({ value }) => value.start))[index] as number;
		const needs = (timed.at(-1)?.endsAt ?? round.value.start) - round.value.start;
		return needs > has ? new Refusal([tooLong(round, needs, has)]) : timed;
	},
});

const stepsOfRound = memoized(roundByTheClock);

/** Every round of the plan by the clock; none where each kit is reprocessed as it comes. */
export function roundPlans(unit: UnitFigures, days: readonly DayFigures[]): RoundPlan[] {
	const { settings } = unit.read;
	const { rounds } = unit.timetable;
	if (unit.afterEachUse || !rounds.outcome.ok) return [];
	const { rounds: since, countedTo } = unit.sinceDescaling;
	const due = new DescalingsDue(settings.descale_every_rounds, since);
	const isCounted = (date: IsoDate, minutes: number) =>
		countedTo !== undefined && inTime({ date, minutes }, countedTo) <= 0;
	const each = rounds.outcome.value.map((round, index) => ({
		round,
		index: known(say`Which round`, index),
	}));
	const settleMinutes = settlingOf(unit);
	const notDue = known(say`Time in the descaling bath, 0 where none is due`, 0);
	return days.flatMap((day) =>
		each.map(({ round, index }, i) => ({
			date: day.date,
			round,
			steps: derive(stepsOfRound, {
				steps: unit.steps,
				kitsInRounds: day.rounds,
				kitsInService: unit.kitsInService,
				confidence: settings.plan_confidence,
				workers: settings.workers_per_round,
				loads: unit.loads,
				rounds,
				index,
				descaleMinutes:
					!isCounted(day.date, round.value.start) && due.at(day.rounds, i)
						? settings.descale_minutes
						: notDue,
				rinseMinutes: settings.descale_rinse_minutes,
				settleMinutes,
			}),
		})),
	);
}

/** Powder brings lime with it, which has to sink. */
function settlingOf({ productInUse, read }: UnitFigures): Figure {
	return "row" in productInUse && productInUse.row.value.form === "powder"
		? read.settings.settle_minutes
		: known(say`The solution settles for, 0 where it has no deposit`, 0);
}

function known(label: string, value: number): Figure {
	return { label, unit: "", outcome: { ok: true, value }, origin: { kind: "name" } };
}
