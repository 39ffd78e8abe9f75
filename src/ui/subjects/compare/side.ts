import { type KeptCopy, keptCopies } from "../../../core/edit/keptCopies.ts";
import { withCopyUsed } from "../../../core/edit/withCopyUsed.ts";
import type { Place, Problem } from "../../../core/problem.ts";
import { textsOf } from "../../../core/read/textsOf.ts";
import { say } from "../../../core/say.ts";
import { keptSettingsSheet } from "../../../core/sheets/keptSettings.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { lineOf } from "../../../core/workbook.ts";
import { type State, Store } from "../../state/store.ts";

/** Stands for the workbook as it is now; no copy has this name. */
export const NOW = "";

/** One of the two things compared: a workbook with its plan, and what keeps it from an answer. */
export interface Side {
	readonly title: string;
	readonly state: State;
	readonly troubles: readonly Problem[];
	readonly programError?: string;
	/** Where a place of this side is to be put right: settings of a copy stand among the copies. */
	placeOf(place: Place): Place;
}

/** @param name of a kept copy, or NOW */
export function sideOf(state: State, name: string): Side {
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

function answerOf(state: State): Pick<Side, "state" | "troubles" | "programError"> {
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
