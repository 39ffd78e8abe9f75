import { loadMethods } from "../../../core/methods/method.ts";
import { problemsOf } from "../../../core/outcome.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { mixingSteps, withMixingLast } from "../../../core/rounds/mixingSteps.ts";
import { timedSteps } from "../../../core/rounds/timedSteps.ts";
import { say } from "../../../core/say.ts";
import { stepsSheet } from "../../../core/sheets/steps.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { problemWords } from "../../format/problemWords.ts";
import type { State } from "../../state/store.ts";
import { settingOutcome } from "../../state/unitSetting.ts";
import { waysOf } from "../../state/waysOf.ts";
import { holdsOf, type ShownRound, sortOf } from "./dayRounds.ts";

const ONE_KIT = say`One kit, as it comes`;

/** The steps for a single kit with minutes from 0, where each kit is reprocessed as soon as it has been used. */
export function oneKitSteps(state: State): ShownRound {
	const { rows, badRows } = readTable(stepsSheet, state.workbook.tables[stepsSheet.file]);
	const outcome = settingOutcome(state, "workers_per_round");
	const [first] = [...badRows.flatMap(({ problems }) => problems), ...problemsOf(outcome)];
	if (first || rows.length === 0 || !outcome.ok) {
		const waitsFor = first ? problemWords(first) : say`the steps of a round`;
		return { name: ONE_KIT, kits: 1, steps: [], onlyIf: "", waitsFor };
	}
	const steps = rows.map(({ value }) => value);
	const workers = outcome.value;
	const { treated } = waysOf(state);
	const loads = loadMethods
		.filter((method) => treated.has(method))
		.map((method) => ({ method, kits: 1 }));
	const done = steps.filter(({ method }) => !method || treated.has(method));
	const holds = holdsOf(state, done);
	const timed = timedSteps(withMixingLast(done), {
		start: 0,
		kits: 1,
		workers,
		loads,
		descale: null,
		settleMinutes: 0,
	});
	const [mixing] = mixingSteps(done);
	return {
		name: ONE_KIT,
		kits: 1,
		onlyIf: "",
		waitsFor: "",
		steps: timed.map(({ step, startsAt, endsAt, handsOn, method }) => ({
			step,
			sort: sortOf(step, handsOn === "yes", method ?? "", holds),
			startsAt,
			endsAt,
			people: handsOn === "yes" ? workers : 0,
			opensChlorine: step === mixing?.step,
			method: shownWord(method ?? ""),
		})),
	};
}
