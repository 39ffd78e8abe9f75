import { say } from "../../../core/say.ts";
import { runSheetSheet } from "../../../core/sheets/runSheet.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { SheetPage } from "../../page.ts";
import { reprocessesAfterEachUse } from "../../state/reprocessesAfterEachUse.ts";
import type { State } from "../../state/store.ts";
import { dayCautions } from "../week/dayCautions.ts";
import { dayRounds, runDays } from "./dayRounds.ts";
import { oneKitSteps } from "./oneKitSteps.ts";
import { runSheetPrintOuts } from "./runSheetPrintOuts.ts";
import { runSheetView } from "./runSheetView.ts";

/** The steps of each round, with their times. */
export const runSheetPage: SheetPage = {
	sheet: runSheetSheet,
	tellsTruths: true,
	headline: runSheetHeadline,
	over: runSheetView,
	cautions: dayCautions,
	prints: runSheetPrintOuts,
};

function runSheetHeadline(state: State): string | undefined {
	if (reprocessesAfterEachUse(state)) {
		const last = oneKitSteps(state).steps.at(-1);
		return last && say`Each kit takes ${shownPlain(Math.round(last.endsAt))} minutes as it comes`;
	}
	const days = runDays(state);
	const rounds = days.flatMap((day) => dayRounds(state, day));
	if (rounds.length === 0 || rounds.some(({ steps }) => steps.length === 0)) return undefined;
	const minutes = rounds.map(
		({ steps }) => (steps.at(-1)?.endsAt ?? 0) - (steps[0]?.startsAt ?? 0),
	);
	const aDay = rounds.length / days.length;
	const longest = say`${shownPlain(Math.max(...minutes))} minutes`;
	return aDay === 1
		? say`One round a day, over in ${longest} or less`
		: say`${aDay} rounds a day, each over in ${longest} or less`;
}
