import { valueIn } from "../../outcome.ts";
import { advice, type Problem, problem } from "../../problem.ts";
import { Refusal } from "../../refusal.ts";
import { BUSY, handsBusy } from "../../rounds/handsBusy.ts";
import { handsOneByOne } from "../../rounds/handsOneByOne.ts";
import { isDoneFor } from "../../rounds/loads.ts";
import { mixingSteps } from "../../rounds/mixingSteps.ts";
import { minutesOf, roundLength } from "../../rounds/roundLength.ts";
import { missingSorts } from "../../rounds/stepWords.ts";
import { say } from "../../say.ts";
import { roundsSheet } from "../../sheets/rounds.ts";
import { stepsSheet } from "../../sheets/steps.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { kitsOfEachRound, lateRounds } from "./turnaroundMinutes.ts";

/** What the reader should know about the rounds: what does not fit, and what would help. */
export function roundAdvice(unit: UnitFigures, made: PlanTables): Problem[] {
	return [
		...made.rounds.flatMap(({ steps }) => (steps.outcome.ok ? [] : steps.outcome.problems)),
		...tooFewHands(unit, made),
		...pastMidnight(made),
		...shortSoak(unit),
		...lackingSteps(unit),
		...mixingNotMarked(unit),
		...busyHands(unit, made),
	];
}

/** After each use, on the day with most uses: whether the hands there are can do the work. */
function busyHands(unit: UnitFigures, { days }: PlanTables): Problem[] {
	const { soak_alone, worker_hours_a_day, workers_per_round } = unit.read.settings;
	const steps = valueIn(unit.steps);
	const soakAlone = valueIn(soak_alone);
	const workerHoursADay = valueIn(worker_hours_a_day);
	const people = valueIn(workers_per_round);
	const usesPerDay = Math.max(...days.map(({ kitUses }) => valueIn(kitUses) ?? 0));
	if (!unit.afterEachUse || !steps || !soakAlone || !workerHoursADay || !people) return [];
	const hands = handsOneByOne.compute({ steps, people, soakAlone });
	if (hands instanceof Refusal) return [];
	const { workMinutes } = hands;
	const share = Number(handsBusy.compute({ usesPerDay, workMinutes, workerHoursADay, people }));
	if (share <= BUSY) return [];
	// Rounded up, but for what a division leaves behind.
	const percent = Math.ceil(100 * share - 1e-9);
	const place = { file: "unit.csv", line: null, column: "worker_hours_a_day" };
	const received = say`${percent} of 100 minutes`;
	const allowed = say`at most ${100 * BUSY} of 100`;
	if (share > 1)
		return [
			problem(place, {
				code: "hands-overloaded",
				received,
				allowed,
				message: say`Kits would keep those who reprocess them busy for ${percent} of every 100 minutes they have: more people, more hours or shorter steps are needed.`,
			}),
		];
	return [
		advice(place, {
			code: "hands-busy",
			received,
			allowed,
			message: say`Kits keep those who reprocess them busy for ${percent} of every 100 minutes they have; little is left for anything that goes wrong.`,
		}),
	];
}

/** More people than this do not fit round one basin. */
const MOST_PEOPLE = 10;

/** Where a round does not fit, how many people would make all of them fit. */
function tooFewHands(unit: UnitFigures, { cover, days }: PlanTables): Problem[] {
	const steps = valueIn(unit.steps);
	const loads = valueIn(unit.loads);
	const rounds = valueIn(unit.timetable.rounds);
	const now = valueIn(unit.read.settings.workers_per_round);
	const confidence = valueIn(unit.read.settings.plan_confidence);
	const kitsInService = valueIn(unit.kitsInService);
	if (cover.turnaround.outcome.ok || !steps || !loads || !rounds || !now) return [];
	if (confidence === undefined || kitsInService === undefined) return [];
	const known = days.flatMap((day) => valueIn(day.rounds) ?? []);
	const kits = kitsOfEachRound({ days: known, confidence, kitsInService });
	const lateWith = (people: number) => lateRounds(rounds, roundLength(steps, people, loads), kits);
	if (lateWith(now).length === 0) return [];
	const people = Array.from({ length: MOST_PEOPLE }, (_, i) => i + 1).find(
		(w) => lateWith(w).length === 0,
	);
	const minutes =
		people && Math.ceil(minutesOf(roundLength(steps, people, loads), Math.max(...kits)));
	return [
		problem(
			{ file: "unit.csv", line: null, column: "workers_per_round" },
			{
				code: "too-few-hands",
				received: say`${now} in a round`,
				allowed: people ? say`at least ${people}` : say`a longer gap between rounds`,
				message:
					people && minutes
						? say`With ${people} people the round would take ${minutes} minutes and end in time.`
						: say`No number of people makes the round end in time; the rounds are too close together.`,
			},
		),
	];
}

/** A round that ends after midnight, once for each round of the day. */
function pastMidnight({ rounds }: PlanTables): Problem[] {
	const late = new Map<number, Problem>();
	for (const { round, steps } of rounds) {
		const end = valueIn(steps)?.at(-1)?.endsAt ?? 0;
		if (end <= MINUTES_PER_DAY || late.has(round.line)) continue;
		const { label } = round.value;
		const [at, ends] = [writeClock(round.value.start), writeClock(end)];
		late.set(
			round.line,
			advice(
				{ file: roundsSheet.file, line: round.line, column: "start" },
				{
					code: "round-past-midnight",
					received: at,
					allowed: "",
					message: label
						? say`${label} at ${at} ends after midnight, at ${ends}; it belongs to the day it starts on. See who is on duty.`
						: say`The round at ${at} ends after midnight, at ${ends}; it belongs to the day it starts on. See who is on duty.`,
				},
			),
		);
	}
	return [...late.values()];
}

/** Vinegar must be gone before chlorine is opened; which step opens it, only the unit can say. */
function mixingNotMarked({ steps, loads, read }: UnitFigures): Problem[] {
	const list = valueIn(steps) ?? [];
	const every = valueIn(read.settings.descale_every_rounds) ?? 0;
	const soak = valueIn(loads)?.find(({ method }) => method === "chlorine");
	const soaks =
		soak && list.some(({ basis, method }) => basis === "load" && isDoneFor(soak, method));
	if (every === 0 || !soaks || mixingSteps(list).length > 0) return [];
	return [
		advice(
			{ file: stepsSheet.file, line: null, column: "method" },
			{
				code: "mixing-not-marked",
				received: say`no step only for chlorine before the soak`,
				allowed: say`the step that mixes, once a round, only for chlorine`,
				message: say`In a round with descaling chlorine is opened only when the vinegar is rinsed off. Give the mixing a step of its own, counted once a round, and say that it is only for chlorine: it then comes after the vinegar.`,
			},
		),
	];
}

/** What no step is about although sources have it in every sequence: washing and drying, and with chlorine rinsing. */
function lackingSteps({ steps, treated }: UnitFigures): Problem[] {
	const methods = valueIn(treated)?.flatMap((kind) => kind.methods) ?? ["chlorine"];
	// What is thrown away after use is not treated at all.
	if (methods.every((method) => method === "single_use")) return [];
	const isSoaked = methods.includes("chlorine");
	const words = {
		wash: isSoaked
			? say`No step washes the pieces. Sources clean before they disinfect: dirt and blood use up chlorine. Your protocol decides.`
			: say`No step washes the pieces. Sources clean before they disinfect: what is not clean is not disinfected. Your protocol decides.`,
		rinse: say`No step rinses. Sources rinse off soap before the soak, and chlorine after it with boiled water. Your protocol decides.`,
		dry: say`No step dries. Sources dry in the air or with sterile gauze before a kit is put away; damp kits grow germs. Your protocol decides.`,
	};
	const listed = (valueIn(steps) ?? []).map(({ step }) => step);
	const missing = missingSorts(listed).filter((sort) => sort !== "rinse" || isSoaked);
	return missing.map((sort) =>
		advice(
			{ file: stepsSheet.file, line: null, column: "step" },
			{
				code: "step-lacking",
				received: say`${listed.length} steps`,
				allowed: isSoaked ? say`steps that wash, rinse and dry` : say`steps that wash and dry`,
				message: words[sort],
			},
		),
	);
}

function shortSoak({ steps, loads, read }: UnitFigures): Problem[] {
	const load = valueIn(loads)?.find(({ method }) => method === "chlorine");
	const list = valueIn(steps);
	const shortest = valueIn(read.settings.soak_minutes);
	if (!load || !list || shortest === undefined || list.length === 0) return [];
	const soaks = list
		.filter((step) => step.basis === "load" && isDoneFor(load, step.method))
		.map((step) => step.minutes);
	if (soaks.some((minutes) => minutes >= shortest)) return [];
	return [
		advice(
			{ file: "steps.csv", line: null, column: "minutes" },
			{
				code: "short-soak",
				received:
					soaks.length === 0 ? say`no step counted by load` : say`${Math.max(...soaks)} minutes`,
				allowed: say`at least ${shortest} minutes`,
				message: say`No step counted by load lasts the ${shortest} minutes of a soak; look at the steps of a round.`,
			},
		),
	];
}
