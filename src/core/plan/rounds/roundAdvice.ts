import { valueIn } from "../../outcome.ts";
import { advice, type Problem, problem } from "../../problem.ts";
import { roundMinutes } from "../../rounds/roundMinutes.ts";
import { say } from "../../say.ts";
import { roundsSheet } from "../../sheets/rounds.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { gapsBetween } from "./turnaroundMinutes.ts";

/** What the reader should know about the rounds: what does not fit, and what would help. */
export function roundAdvice(unit: UnitFigures, made: PlanTables): Problem[] {
	return [
		...made.rounds.flatMap(({ steps }) => (steps.outcome.ok ? [] : steps.outcome.problems)),
		...tooFewHands(unit, made),
		...pastMidnight(made),
		...shortSoak(unit),
	];
}

/** More people than this do not fit round one basin. */
const MOST_PEOPLE = 10;

/** Where the fullest round does not fit, how many people would make it fit. */
function tooFewHands(unit: UnitFigures, { cover }: PlanTables): Problem[] {
	const steps = valueIn(unit.steps);
	const kits = valueIn(cover.kitsOfFullestRound);
	const kitsInLoad = valueIn(unit.kitsInLoad);
	const starts = valueIn(unit.timetable.starts);
	const now = valueIn(unit.read.settings.workers_per_round);
	if (cover.turnaround.outcome.ok || !steps || !kits || !kitsInLoad || !starts || !now) return [];
	const has = Math.min(...gapsBetween(starts));
	const minutesWith = (workers: number) =>
		Number(roundMinutes.compute({ steps, kits, workers, kitsInLoad }));
	if (!(minutesWith(now) > has)) return [];
	const people = Array.from({ length: MOST_PEOPLE }, (_, i) => i + 1).find(
		(w) => minutesWith(w) <= has,
	);
	return [
		problem(
			{ file: "unit.csv", line: null, column: "workers_per_round" },
			{
				code: "too-few-hands",
				received: say`${now} in a round`,
				allowed: people ? say`at least ${people}` : say`fewer kits, or a longer gap between rounds`,
				message: people
					? say`With ${people} people the round would take ${Math.ceil(minutesWith(people))} minutes and end in time.`
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

function shortSoak({ steps, read }: UnitFigures): Problem[] {
	const list = valueIn(steps);
	const shortest = valueIn(read.settings.soak_minutes);
	if (!list || shortest === undefined || list.length === 0) return [];
	const soaks = list.filter((step) => step.basis === "load").map((step) => step.minutes);
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
