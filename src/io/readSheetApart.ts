import type { Columns } from "../core/column.ts";
import type { Problem } from "../core/problem.ts";
import type { Question } from "../core/read/block/blockTable.ts";
import { readBlock } from "../core/read/block/readBlock.ts";
import type { ReadTable } from "../core/read/goodRow.ts";
import { readTable } from "../core/read/readTable.ts";
import type { RowOf, Sheet } from "../core/sheet.ts";
import { withoutBlankEnds } from "../core/withoutBlankEnds.ts";
import { decode } from "./decode.ts";
import { type Answers, questionProblem } from "./fileQuestion.ts";
import { readCsv } from "./readCsv.ts";

interface ReadApart<R> {
	/** Undefined where the file is no such sheet, or waits for an answer. */
	readonly rows: ReadTable<R> | undefined;
	readonly problems: readonly Problem[];
	/** Set where the file waits for an answer; it is among the problems too. */
	readonly question?: Question;
}

/**
 * Reads a file that stands by itself, apart from any workbook. Numbers and dates are read
 * by what the file itself tells.
 */
export function readSheetApart<C extends Columns>(
	sheet: Sheet<C>,
	bytes: Uint8Array,
	answers: Answers = {},
): ReadApart<RowOf<Sheet<C>>> {
	const { file } = sheet;
	const decoded = decode(file, bytes, answers.encoding);
	if (!decoded.ok) return { rows: undefined, problems: [decoded.problem] };
	const { table: read, problems: found, refused, separator } = readCsv(file, decoded.text);
	const problems = [...(decoded.advice ? [decoded.advice] : []), ...found];
	if (refused) return { rows: undefined, problems };
	const block = readBlock([{ sheet, table: withoutBlankEnds(read), separator }], answers);
	const [question] = block.questions;
	if (question)
		return { rows: undefined, problems: [...problems, questionProblem(question)], question };
	const rows = readTable(sheet, block.tables[0]);
	const isSheet = !rows.problems.some(({ weight }) => weight === "error");
	return {
		rows: isSheet ? rows : undefined,
		problems: [...problems, ...rows.problems, ...rows.badRows.flatMap((row) => row.problems)],
	};
}
