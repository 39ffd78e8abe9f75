import type { Change, Choices, Conflict, Side } from "../../../core/merge/conflict.ts";
import type { Save } from "../../../core/merge/descent.ts";
import { mergeCopies, type Together } from "../../../core/merge/mergeCopies.ts";
import { twoUnits } from "../../../core/merge/twoUnits.ts";
import type { Problem } from "../../../core/problem.ts";
import { readCopy } from "../../../io/history/readCopy.ts";
import { unreadCopy } from "../../../io/history/unreadCopy.ts";
import type { Opened } from "../../files/readGiven.ts";
import { copyNow } from "../../state/descentOf.ts";
import type { State } from "../../state/store.ts";

/** What becomes of the workbook of the moment and another copy, before it is done. */
export interface Preview {
	readonly together: Together;
	/** Of each sheet with a difference: how much came from either side. */
	readonly sheets: readonly SheetChanges[];
	/** The last save of the other copy, where it remembers any with a time or a name. */
	readonly theirSave: Save | undefined;
	/** Set where the copies name two units. */
	readonly units: Problem | undefined;
	/** Together with what was chosen. */
	chosen(choices: Choices): Together;
}

export interface SheetChanges {
	readonly file: string;
	readonly changes: readonly Change[];
	readonly conflicts: readonly Conflict[];
}

/** What keeps the other copy from being brought together, or what becomes of both. */
export function previewOf(
	state: State,
	other: Opened,
): { readonly why: readonly Problem[] } | Preview {
	const why = unreadCopy(other);
	if (why.length > 0) return { why };
	const [ours, theirs] = [copyNow(state), readCopy(other)];
	const together = mergeCopies(ours, theirs);
	const files = Object.keys(together.workbook.tables);
	const sheets = files
		.map((file) => ({
			file,
			changes: together.changes.filter((change) => change.file === file),
			conflicts: together.conflicts.filter((conflict) => conflict.file === file),
		}))
		.filter(({ changes, conflicts }) => changes.length + conflicts.length > 0);
	return {
		together,
		sheets,
		theirSave: theirs.descent.saves.findLast(({ at, by }) => at !== "" || by !== ""),
		units: twoUnits(ours.workbook, theirs.workbook),
		chosen: (choices) => mergeCopies(ours, theirs, choices),
	};
}

/** How many of a kind came from a side. */
export function countOf(changes: readonly Change[], from: Side, kind: Change["kind"]): number {
	return changes.filter((change) => change.from === from && change.kind === kind).length;
}
