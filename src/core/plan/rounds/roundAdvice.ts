import { derive } from "../../calculation.ts";
import type { MethodsOfKits } from "../../methods/methodsOfKits.ts";
import { problemsOf, valueIn } from "../../outcome.ts";
import { advice, type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { BUSY, handsBusy } from "../../rounds/handsBusy.ts";
import { handsOneByOne } from "../../rounds/handsOneByOne.ts";
import { isDoneFor, type Loads } from "../../rounds/loads.ts";
import { mixingSteps } from "../../rounds/mixingSteps.ts";
import { minutesOf, roundLength } from "../../rounds/roundLength.ts";
import type { Step } from "../../rounds/step.ts";
import { missingSorts } from "../../rounds/stepWords.ts";
import { say } from "../../say.ts";
import { type RoundsRow, roundsSheet } from "../../sheets/rounds.ts";
import { stepsSheet } from "../../sheets/steps.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { fullOnceEnough } from "./fullOnceEnough.ts";
import { kitsPreparedFor } from "./kitsPreparedFor.ts";
import { lateRounds, TOO_LONG } from "./turnaroundMinutes.ts";

/** What the reader should know about the rounds: what does not fit, and what would help. */
export function roundAdvice(unit: UnitFigures, made: PlanTables): Problem[] {
	return [
		...made.rounds.flatMap(({ steps }) => (steps.outcome.ok ? [] : steps.outcome.problems)),
		...tooFewHands(unit, made),
		...fullOnceEnough(unit, made),
		...pastMidnight(made),
		...shortSoak(unit),
		...lackingSteps(unit),
		...mixingNotMarked(unit),
		...busyHands(unit, made),
	];
}

/** After each use, on the day with most uses: whether the hands there are can do the work. */
function busyHands(unit: UnitFigures, { days }: PlanTables): Problem[] {
	const { soak_alone: soakAlone, workers_per_round, worker_hours_a_day } = unit.read.settings;
	const hands = derive(handsOneByOne, { steps: unit.steps, people: workers_per_round, soakAlone });
	const known = valueIn(hands);
	const workerHoursADay = valueIn(worker_hours_a_day);
	if (!unit.afterEachUse || !known || !workerHoursADay) return [];
	const usesPerDay = Math.max(...days.map(({ kitUses }) => valueIn(kitUses) ?? 0));
	const share = Number(handsBusy.compute({ ...known, usesPerDay, workerHoursADay }));
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
	if (!problemsOf(cover.turnaround.outcome).some(({ code }) => code === TOO_LONG)) return [];
	// That a round is too long is only known where all that makes it long is.
	const { workers_per_round: now } = unit.read.settings;
	const rounds = valueIn(unit.timetable.rounds) as GoodRow<RoundsRow>[];
	const kits = kitsPreparedFor(unit, days, valueIn(unit.kitsInService) as number);
	const lengthWith = (people: number) =>
		roundLength(valueIn(unit.steps) as Step[], people, valueIn(unit.loads) as Loads);
	const people = Array.from({ length: MOST_PEOPLE }, (_, i) => i + 1).find(
		(w) => lateRounds(rounds, lengthWith(w), kits).length === 0,
	);
	return [
		problem(
			{ file: "unit.csv", line: null, column: "workers_per_round" },
			{
				code: "too-few-hands",
				received: say`${valueIn(now) as number} in a round`,
				allowed: people ? say`at least ${people}` : say`a longer gap between rounds`,
				message: people
					? say`With ${people} people the round would take ${Math.ceil(minutesOf(lengthWith(people), Math.max(...kits)))} minutes and end in time.`
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
	const listed = valueIn(steps)?.map(({ step }) => step);
	if (!listed) return [];
	// Steps are only known where it is known how pieces are treated.
	const methods = (valueIn(treated) as MethodsOfKits[]).flatMap((kind) => kind.methods);
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
