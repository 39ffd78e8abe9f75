import { conflictProblem } from "../core/merge/conflictProblem.ts";
import type { Copy, Descent } from "../core/merge/descent.ts";
import { mergeCopies, type Together } from "../core/merge/mergeCopies.ts";
import { rootDescent } from "../core/merge/rootDescent.ts";
import { twoUnits } from "../core/merge/twoUnits.ts";
import { withSave } from "../core/merge/withSave.ts";
import type { Problem } from "../core/problem.ts";
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
	const units = twoUnits(one.workbook, other.workbook);
	const others = otherFiles(ours, theirs, base);
	const problems = [
		...(units ? [units] : []),
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
