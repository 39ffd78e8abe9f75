import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { exampleSoak } from "../../rounds/exampleSoak.ts";
import type { TimedStep } from "../../rounds/timedSteps.ts";
import { say } from "../../say.ts";
import { runSheetSheet } from "../../sheets/runSheet.ts";
import { commonPractice } from "../../source.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import { addDays } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { renewedInRounds } from "./renewedInRounds.ts";
import type { RoundPlan } from "./roundPlans.ts";

interface Inputs {
	readonly steps: readonly TimedStep[];
	readonly index: number;
}

/**
 * One cell of a timed step. Clock times are local wall-clock times: no time zone takes part.
 *
 * @param ofExample what the example's step, 20 minutes of soak for 3 kits from 7:30, has there
 */
function part<T>(
	key: string,
	label: string,
	unit: string,
	of: (step: TimedStep) => T,
	ofExample: T,
) {
	return calculation<Inputs, T>({
		key,
		label,
		unit,
		formula: say`From the steps of the round by the clock.`,
		source: commonPractice,
		inputs: {
			steps: { label: say`Steps of the round by the clock`, unit: "" },
			index: { label: say`Which step`, unit: "" },
		},
		example: {
			inputs: {
				steps: [exampleSoak],
				index: 0,
			},
			result: ofExample,
			within: 0,
		},
		compute: ({ steps, index }) => of(steps[index] as TimedStep),
	});
}

const step = part("step", say`Step`, "", (s) => s.step, "soak");
const starts = part("starts", say`Starts`, say`h:min`, (s) => writeClock(s.startsAt), "07:30");
const ends = part("ends", say`Ends`, say`h:min`, (s) => writeClock(s.endsAt), "07:50");
const handsOn = part("hands_on", say`Somebody is busy`, "", (s) => s.handsOn, "no");
const method = part("method", say`Method`, "", (s) => s.method, "chlorine");
const kits = part("kits", say`Kits`, say`kits`, (s) => s.kits, 3);

/** Every round of every day, step by step. */
export function runSheetTable(
	unit: UnitFigures,
	plans: () => readonly RoundPlan[],
): ComputedTable<typeof runSheetSheet> {
	return onDemand(runSheetSheet, () => {
		const rounds = plans();
		const renewed = renewedInRounds(unit, rounds);
		return rounds.flatMap((round, i) =>
			rowsOf(unit, round, renewed[i] ?? [], i === 0 && kitsWait(unit)),
		);
	});
}

function rowsOf(
	unit: UnitFigures,
	plan: RoundPlan,
	renewed: readonly string[],
	isAwaited: boolean,
): ComputedRow<typeof runSheetSheet>[] {
	const { outcome } = plan.steps;
	const count = outcome.ok ? outcome.value.length : 1;
	return Array.from({ length: count }, (_, i) => {
		const inputs = { steps: plan.steps, index: nameFigure(say`Which step`, i) };
		const timed = outcome.ok ? outcome.value[i] : undefined;
		return {
			date: nameFigure(say`Date`, plan.date),
			round: nameFigure(say`Round`, plan.round.value.label || writeClock(plan.round.value.start)),
			step: derive(step, inputs),
			starts: derive(starts, inputs),
			ends: derive(ends, inputs),
			hands_on: derive(handsOn, inputs),
			kits: derive(kits, inputs),
			people: people(unit, timed),
			method: derive(method, inputs),
			only_if: nameFigure(say`Only if`, isAwaited || renewed.length > 0 ? "" : say`a kit waits`),
			renew: nameFigure(say`Renew unused`, i === 0 ? renewed.join(", ") : ""),
			ends_on: nameFigure(
				say`Ends on`,
				timed && timed.endsAt >= MINUTES_PER_DAY ? addDays(plan.date, 1) : "",
			),
		};
	});
}

/** Whether a kit of the register waits for the plan's first round; one that came out of a round waits for its test alone. */
function kitsWait({ readiness }: UnitFigures): boolean {
	return readiness.some(({ state, waitsForCheck }) => state === "to_reprocess" && !waitsForCheck);
}

function people(unit: UnitFigures, timed: TimedStep | undefined): Figure {
	return timed?.handsOn === "no"
		? nameFigure(say`People`, 0)
		: unit.read.settings.workers_per_round;
}
