import type { Change, Choices, Conflict } from "./conflict.ts";
import type { Copy, Save, SheetDescent } from "./descent.ts";
import { isContradictory } from "./isContradictory.ts";
import { mergeSheet } from "./mergeSheet.ts";
import { unknownDescent } from "./rootDescent.ts";

/** Two copies of one workbook as one, and what came from where. */
export interface Together extends Copy {
	/** What both changed differently; without a choice ours stands. */
	readonly conflicts: readonly Conflict[];
	readonly changes: readonly Change[];
	/** The last save that both come from; undefined where they share none. */
	readonly parted: Save | undefined;
}

const NO_CHOICES: Choices = new Map();

/**
 * Brings two copies of a workbook together: every line of both, and every change that one
 * of them made since they parted. A sheet that only one of them has stands as it is there.
 *
 * @param choices which side counts in a conflict
 */
export function mergeCopies(ours: Copy, theirs: Copy, choices: Choices = NO_CHOICES): Together {
	const [our, their] = [savesOf(ours), savesOf(theirs)];
	const sheets: Record<string, SheetDescent> = { ...theirs.descent.sheets, ...ours.descent.sheets };
	const conflicts: Conflict[] = [];
	const changes: Change[] = [];
	for (const [file, descent] of Object.entries(ours.descent.sheets)) {
		const other = theirs.descent.sheets[file];
		if (!other) continue;
		const isKnown = !isContradictory(descent, other);
		const merged = mergeSheet(
			file,
			{ side: "ours", descent: isKnown ? descent : forgotten(file, descent, our), saves: our },
			{ side: "theirs", descent: isKnown ? other : forgotten(file, other, their), saves: their },
			choices,
		);
		sheets[file] = merged.descent;
		for (const conflict of merged.conflicts) conflicts.push(conflict);
		for (const change of merged.changes) changes.push(change);
	}
	const files = [...Object.keys(ours.descent.sheets), ...Object.keys(theirs.descent.sheets)];
	const tables = Object.fromEntries(
		files.map((file) => [file, (sheets[file] as SheetDescent).table]),
	);
	return {
		workbook: { ...ours.workbook, tables },
		descent: { saves: [...new Map([...our, ...their]).values()], sheets },
		conflicts,
		changes,
		parted: latest([...our.values()].filter(({ id }) => their.has(id))),
	};
}

/** A sheet of which a copy had better remember nothing; what it stands for is one of the copy's saves. */
function forgotten(file: string, { table }: SheetDescent, saves: Map<string, Save>): SheetDescent {
	const { save, descent } = unknownDescent(file, table);
	saves.set(save.id, save);
	return descent;
}

function savesOf({ descent }: Copy): Map<string, Save> {
	return new Map(descent.saves.map((save) => [save.id, save]));
}

function latest(saves: readonly Save[]): Save | undefined {
	return saves.reduce<Save | undefined>(
		(last, save) => (last && last.at > save.at ? last : save),
		undefined,
	);
}
