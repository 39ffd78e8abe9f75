import type { Conflict, Side } from "../../../src/core/merge/conflict.ts";
import type { Copy } from "../../../src/core/merge/descent.ts";
import type { Together } from "../../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { tableOf } from "../smallUnit.ts";

/** A workbook of one sheet, by its lines. */
export const sheet = (file: string, ...lines: string[]): Workbook => ({
	tables: { [file]: tableOf(lines.join("\n")) },
});
export const root = (workbook: Workbook): Copy => ({ workbook, descent: rootDescent(workbook) });
export const next = ({ descent }: Copy, workbook: Workbook, id: string): Copy => ({
	workbook,
	descent: withSave(descent, workbook, { id, at: `2027-03-0${id.length}T10:00`, by: id }),
});
export const linesOf = ({ workbook }: Copy, file: string) => {
	const { header = [], rows = [] } = workbook.tables[file] ?? {};
	return [header, ...rows].map((row) => row.join(","));
};
export const told = ({ conflicts }: Together) =>
	conflicts.map(({ row, column, ours, theirs }) => [row, column, ours.text, theirs.text]);
export const choose = ({ conflicts }: Together, side: Side) =>
	new Map(conflicts.map(({ key }: Conflict) => [key, side]));
