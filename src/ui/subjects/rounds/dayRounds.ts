import type { LoadMethod } from "../../../core/methods/method.ts";
import { timingStep } from "../../../core/methods/timingStep.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { isStep, soakStep } from "../../../core/rounds/soakStep.ts";
import type { Step } from "../../../core/rounds/step.ts";
import { DESCALE_STEP, RINSE_STEP } from "../../../core/rounds/timedSteps.ts";
import { runSheetSheet } from "../../../core/sheets/runSheet.ts";
import { stepsSheet } from "../../../core/sheets/steps.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

/** What a step is, where that matters for safety or for the clock. */
export type StepSort = "work" | "wait" | "soak" | "hold" | "descale" | "rinse";

export interface ShownStep {
	readonly step: string;
	readonly sort: StepSort;
	/** Minutes after the midnight of the day the round starts on; beyond 1440 on the next day. */
	readonly startsAt: number;
	readonly endsAt: number;
	readonly people: number;
	/** Whether chlorine is opened in it; known where a kit goes alone. */
	readonly opensChlorine?: boolean;
	/** The method that the step belongs to, in words; "" for work that is the same for all. */
	readonly method: string;
}

export interface ShownRound {
	readonly name: string;
	readonly kits: number;
	readonly steps: readonly ShownStep[];
	/** On what the round hangs, in words; "" where it surely runs. */
	readonly onlyIf: string;
	/** Why there are no steps, where there are none. */
	readonly waitsFor: string;
}

/** The days that the run sheet covers. */
export function runDays(state: State): IsoDate[] {
	return [...new Set(rowsOf(state.plan, runSheetSheet).map((row) => wordIn(row.date)))];
}

/** The rounds of one day as the run sheet has them. */
export function dayRounds(state: State, day: IsoDate): ShownRound[] {
	const sort = sorter(state);
	const rounds = new Map<unknown, ShownRound>();
	for (const row of rowsOf(state.plan, runSheetSheet)) {
		if (wordIn(row.date) !== day) continue;
		const before = rounds.get(roundOf(row));
		const outcome = row.step?.outcome;
		rounds.set(roundOf(row), {
			name: wordIn(row.round),
			kits: Math.max(before?.kits ?? 0, numberIn(row.kits) ?? 0),
			steps: outcome?.ok ? [...(before?.steps ?? []), stepOf(row, sort, before)] : [],
			onlyIf: wordIn(row.only_if),
			waitsFor: waitsFor(outcome),
		});
	}
	return [...rounds.values()];
}

/** Rounds may share a name; the steps they were timed with are theirs alone. */
function roundOf({ step }: Row): unknown {
	return step?.origin.kind === "computed" ? step.origin.inputs.steps : undefined;
}

type Row = ReturnType<typeof rowsOf>[number];

function stepOf(row: Row, sort: (row: Row) => StepSort, before: ShownRound | undefined): ShownStep {
	const earliest = before?.steps.at(-1)?.endsAt ?? 0;
	const startsAt = notBefore(minutesOf(wordIn(row.starts)), earliest);
	return {
		step: wordIn(row.step),
		sort: sort(row),
		startsAt,
		endsAt: notBefore(minutesOf(wordIn(row.ends)), startsAt),
		people: numberIn(row.people) ?? 0,
		method: shownWord(wordIn(row.method)),
	};
}

/** A clock time that reads earlier than what came before it lies on the next day. */
function notBefore(minutes: number, earliest: number): number {
	return minutes < earliest ? minutes + MINUTES_PER_DAY : minutes;
}

function minutesOf(clock: string): number {
	const [hours = 0, minutes = 0] = clock.split(":").map(Number);
	return hours * MINUTES_PER_HOUR + minutes;
}

function sorter(state: State): (row: Row) => StepSort {
	const { rows } = readTable(stepsSheet, state.workbook.tables[stepsSheet.file]);
	const holds = holdsOf(
		state,
		rows.map(({ value }) => value),
	);
	return (row) =>
		sortOf(wordIn(row.step), wordIn(row.hands_on) === "yes", wordIn(row.method), holds);
}

/** Names of the steps during which each method does its work, as the list of steps has them. */
export type Holds = Readonly<Partial<Record<string, string>>>;

export function holdsOf(state: State, steps: readonly Step[]): Holds {
	const of = (method: LoadMethod) => steps.filter((step) => (step.method ?? method) === method);
	const held = (method: LoadMethod, minutes: number | undefined) =>
		timingStep(
			of(method)
				.filter(({ basis }) => basis === "load")
				.map((step) => ({ ...step, waits: step.hands_on === "no" }))
				.filter(({ waits }) => waits),
			minutes ?? 0,
		)?.step;
	return {
		chlorine: soakStep(of("chlorine"), unitSetting(state, "soak_minutes")),
		boiling: held("boiling", unitSetting(state, "disinfect_boil_minutes")),
		steam: held("steam", unitSetting(state, "steam_minutes")),
	};
}

/** @param method of the load that the step belongs to, as files have it; "" for none */
export function sortOf(step: string, handsOn: boolean, method: string, holds: Holds): StepSort {
	if (step === DESCALE_STEP) return "descale";
	if (step === RINSE_STEP) return "rinse";
	if (isStep(step, holds[method])) return method === "chlorine" ? "soak" : "hold";
	return handsOn ? "work" : "wait";
}
