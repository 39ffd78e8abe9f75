import { roundsEntry } from "../../../core/edit/begin/roundsEntry.ts";
import { type KeptCopy, keptCopies } from "../../../core/edit/keptCopies.ts";
import { birthsEveryDayEntry } from "../../../core/edit/trial/birthsEveryDayEntry.ts";
import { kitsTriedEntry } from "../../../core/edit/trial/kitsTriedEntry.ts";
import { methodTriedEntry } from "../../../core/edit/trial/methodTriedEntry.ts";
import { withCopyUsed } from "../../../core/edit/withCopyUsed.ts";
import type { Place, Problem } from "../../../core/problem.ts";
import { textsOf } from "../../../core/read/textsOf.ts";
import { say } from "../../../core/say.ts";
import { birthsSheet } from "../../../core/sheets/births.ts";
import { keptSettingsSheet } from "../../../core/sheets/keptSettings.ts";
import { kitsSheet } from "../../../core/sheets/kits.ts";
import { roundsSheet } from "../../../core/sheets/rounds.ts";
import { stepsSheet } from "../../../core/sheets/steps.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { lineOf } from "../../../core/workbook.ts";
import { type State, Store, wholeState } from "../../state/store.ts";
import { trialOf } from "./trialOf.ts";
import { whatIfTitle } from "./whatIfTitle.ts";

/** Stands for the workbook as it is now; no copy has this name. */
export const NOW = "";

/** Stands for what is being tried; no copy has this name either. */
export const TRIED = " ";

/** One of the two things compared: a workbook with its plan, and what keeps it from an answer. */
export interface Side {
	readonly title: string;
	readonly state: State;
	readonly troubles: readonly Problem[];
	readonly programError?: string;
	/** Where a place of this side is to be put right: settings of a copy stand among the copies. */
	placeOf(place: Place): Place;
}

/** @param name of a kept copy, or NOW, or TRIED */
export function sideOf(state: State, name: string): Side {
	if (name === TRIED) return sideTried(state);
	const copy = keptCopies(state.workbook).find((each) => each.name === name);
	if (!copy)
		return { ...answerOf(state), title: say`the workbook as it is now`, placeOf: (place) => place };
	const used = new Store(withCopyUsed(state.workbook, copy), () => state.today).state;
	const { troubles, ...rest } = answerOf(used);
	return {
		...rest,
		title: say`“${name}”`,
		troubles: [...copy.problems, ...troubles],
		placeOf: (place) => placeInCopy(state, used, copy, place),
	};
}

function sideTried(state: State): Side {
	const { workbook, differing } = trialOf(state);
	const tried = new Store(workbook, () => state.today).state;
	const keyOf = ({ file, line, column }: Place) => {
		if (file !== unitSheet.file) return keysByFile[file];
		const table = workbook.tables[file];
		const row = table?.rows.find((_, at) => lineOf(table, at) === line);
		return row ? textsOf(workbook, unitSheet).cell(row, "key").trim() : column;
	};
	return {
		...answerOf(tried),
		title: say`what you try`,
		placeOf(place) {
			const key = keyOf(place);
			return key !== undefined && differing.includes(key)
				? { file: whatIfTitle.file, line: null, column: key }
				: place;
		},
	};
}

/** What is tried in a sheet other than the settings. */
const keysByFile: Readonly<Record<string, string>> = {
	[birthsSheet.file]: birthsEveryDayEntry.key,
	[kitsSheet.file]: kitsTriedEntry.key,
	[roundsSheet.file]: roundsEntry.key,
	[stepsSheet.file]: methodTriedEntry.key,
};

function answerOf(made: State): Pick<Side, "state" | "troubles" | "programError"> {
	const state = wholeState(made);
	const { plan, programError } = state;
	const errors = plan.problems.filter(({ weight }) => weight === "error");
	return {
		state,
		troubles: plan.made ? [] : errors,
		...(programError === undefined ? {} : { programError }),
	};
}

/** Whether this side's figures stand. A copy that is only half understood has none. */
export function hasAnswer({ troubles, programError }: Side): boolean {
	return troubles.length === 0 && programError === undefined;
}

function placeInCopy({ workbook }: State, used: State, { rows }: KeptCopy, place: Place): Place {
	const unit = textsOf(used.workbook, unitSheet);
	const table = used.workbook.tables[place.file];
	if (!table || place.file !== unitSheet.file) return place;
	const row = table.rows.find((_, at) => lineOf(table, at) === place.line);
	const key = row ? unit.cell(row, "key").trim() : place.column;
	const kept = rows.find(({ value }) => value.of === "setting" && value.key.trim() === key);
	if (!kept || !workbook.tables[keptSettingsSheet.file]) return place;
	return { file: keptSettingsSheet.file, line: kept.line, column: "value" };
}
