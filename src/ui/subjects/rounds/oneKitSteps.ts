import { problemsOf } from "../../../core/outcome.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { mixingSteps, withMixingLast } from "../../../core/rounds/mixingSteps.ts";
import { soakStep } from "../../../core/rounds/soakStep.ts";
import { timedSteps } from "../../../core/rounds/timedSteps.ts";
import { say } from "../../../core/say.ts";
import { stepsSheet } from "../../../core/sheets/steps.ts";
import type { State } from "../../state/store.ts";
import { settingOutcome, unitSetting } from "../../state/unitSetting.ts";
import { type ShownRound, sortOf } from "./dayRounds.ts";

const ONE_KIT = say`One kit, as it comes`;

/** The steps for a single kit with minutes from 0, where each kit is reprocessed as soon as it has been used. */
export function oneKitSteps(state: State): ShownRound {
	const { rows, badRows } = readTable(stepsSheet, state.workbook.tables[stepsSheet.file]);
	const outcome = settingOutcome(state, "workers_per_round");
	const waitsFor =
		[...badRows.flatMap(({ problems }) => problems), ...problemsOf(outcome)][0]?.message ??
		(rows.length === 0 ? say`the steps of a round` : "");
	if (waitsFor !== "" || !outcome.ok) return { name: ONE_KIT, kits: 1, steps: [], waitsFor };
	const steps = rows.map(({ value }) => value);
	const workers = outcome.value;
	const soak = soakStep(steps, unitSetting(state, "soak_minutes"));
	const timed = timedSteps(withMixingLast(steps), {
		start: 0,
		kits: 1,
		workers,
		kitsInLoad: 1,
		descale: null,
		settleMinutes: 0,
	});
	const [mixing] = mixingSteps(steps);
	return {
		name: ONE_KIT,
		kits: 1,
		waitsFor,
		steps: timed.map(({ step, startsAt, endsAt, handsOn }) => ({
			step,
			sort: sortOf(step, handsOn === "yes", soak),
			startsAt,
			endsAt,
			people: handsOn === "yes" ? workers : 0,
			opensChlorine: step === mixing?.step,
		})),
	};
}
