import { conflictProblem, twoUnits } from "../core/merge/conflictProblem.ts";
import type { Copy, Descent } from "../core/merge/descent.ts";
import { mergeCopies, type Together } from "../core/merge/mergeCopies.ts";
import { rootDescent } from "../core/merge/rootDescent.ts";
import { withSave } from "../core/merge/withSave.ts";
import type { Problem } from "../core/problem.ts";
import { readSettings } from "../core/read/readSettings.ts";
import { unitSheet } from "../core/sheets/unit.ts";
import type { Workbook } from "../core/workbook.ts";
import { problemsCsv } from "../io/computedCsv.ts";
import { readCopy } from "../io/history/readCopy.ts";
import type { ReadFiles } from "../io/readFiles.ts";
import { workbookFiles } from "../io/workbookFiles.ts";
import { otherFiles } from "./otherFiles.ts";

interface MergeFiles {
	/** Every file to write, by name. */
	readonly files: Readonly<Record<string, string | Uint8Array>>;
	readonly problems: readonly Problem[];
	readonly together: Together;
}

/** Brings two copies that were read together, and makes the texts of the files of both. */
export function mergeFiles(ours: ReadFiles, theirs: ReadFiles, base?: ReadFiles): MergeFiles {
	const [one, other] = [readCopy(ours), readCopy(theirs)];
	const from = base && rootDescent(readCopy(base).workbook);
	const together = from
		? mergeCopies(since(from, one), since(from, other))
		: mergeCopies(one, other);
	const [name, otherName] = [unitName(one.workbook), unitName(other.workbook)];
	const others = otherFiles(ours, theirs, base);
	const problems = [
		...(name !== otherName && name && otherName ? [twoUnits(name, otherName)] : []),
		...together.conflicts.map(conflictProblem),
		...others.problems,
	];
	const files = workbookFiles(together.workbook, undefined, together.descent);
	return {
		files: { ...others.files, ...files, "problems.csv": problemsCsv(problems) },
		problems,
		together,
	};
}

/** A copy as what was made of a base, whatever its own file remembers of its rows. */
function since(base: Descent, { workbook, descent }: Copy): Copy {
	const [state] = rootDescent(workbook).saves;
	if (!state) return { workbook, descent };
	const from = withSave(base, workbook, state);
	const saves = new Map([...from.saves, ...descent.saves].map((save) => [save.id, save]));
	return { workbook, descent: { ...from, saves: [...saves.values()] } };
}

function unitName({ tables }: Workbook): string {
	const { outcome } = readSettings(tables[unitSheet.file]).settings.unit_name;
	return outcome.ok ? outcome.value : "";
}
