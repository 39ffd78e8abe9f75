import { defaultFigure, type Figure, typedFigure } from "../calculation.ts";
import type { Columns } from "../column.ts";
import type { Sheet, ValueOf } from "../sheet.ts";
import type { GoodRow } from "./goodRow.ts";

/**
 * A cell of a typed sheet as a figure: typed in, or the column's default where the cell was blank.
 *
 * A value that was typed and happens to be the default is typed.
 */
export function cellFigure<C extends Columns, K extends keyof C & string>(
	{ file, columns }: Sheet<C>,
	{ line, value, defaults }: GoodRow<{ readonly [P in K]: ValueOf<C[P]> }>,
	column: K,
): Figure<ValueOf<C[K]>> {
	const { label, unit } = columns[column] as C[K];
	const figure = defaults?.includes(column) ? defaultFigure : typedFigure;
	return figure(label, unit, value[column], { file, line, column });
}

/** The same of a cell that may be blank; undefined where it is. */
export function givenFigure<C extends Columns, K extends keyof C & string>(
	sheet: Sheet<C>,
	row: GoodRow<{ readonly [P in K]: ValueOf<C[P]> }>,
	column: K,
): Figure<NonNullable<ValueOf<C[K]>>> | undefined {
	if (row.value[column] === null) return undefined;
	return cellFigure(sheet, row, column) as Figure<NonNullable<ValueOf<C[K]>>>;
}
