import { type Child, el } from "../dom/el.ts";
import { partsOf } from "./partsOf.ts";

export interface PaperColumn {
	readonly label: string;
	readonly unit?: string;
	readonly numeric?: boolean;
	/** Room to write by hand. */
	readonly blank?: boolean;
}

/** Rows under one heading; a table may have several such parts. */
export interface PaperPart {
	readonly heading?: string;
	readonly rows: readonly (readonly Child[])[];
}

/**
 * So many rows stand in one part of the table. Firefox lays out, for each page anew, what is
 * left of the part that the page ends in: a part of thousands of rows took it minutes.
 */
const ROWS_TOGETHER = 20;

/** A table made for paper: its head stands again on each page, and no row is split. */
export function paperTable(
	name: string,
	columns: readonly PaperColumn[],
	parts: readonly PaperPart[],
): HTMLTableElement {
	const classOf = ({ numeric, blank }: PaperColumn) =>
		numeric ? "numeric" : blank ? "blank" : undefined;
	return el(
		"table",
		{ class: "paper-table" },
		el("caption", {}, name),
		el(
			"thead",
			{},
			el(
				"tr",
				{},
				...columns.map((column) =>
					el(
						"th",
						{ scope: "col", class: classOf(column) },
						column.label,
						column.unit && el("span", { class: "unit" }, ` ${column.unit}`),
					),
				),
			),
		),
		...parts
			.flatMap(inParts)
			.map(({ heading, rows }) =>
				el(
					"tbody",
					{},
					heading &&
						el(
							"tr",
							{ class: "part" },
							el("th", { colspan: columns.length, scope: "rowgroup" }, heading),
						),
					...rows.map((cells) =>
						el(
							"tr",
							{},
							...columns.map((column, at) =>
								el(
									at === 0 ? "th" : "td",
									{ class: classOf(column), ...(at === 0 ? { scope: "row" } : {}) },
									cells[at],
								),
							),
						),
					),
				),
			),
	);
}

/** The heading stands over the first of the rows. */
function inParts({ heading, rows }: PaperPart): PaperPart[] {
	return partsOf(rows, ROWS_TOGETHER).map((together, at) => ({
		...(heading !== undefined && at === 0 && { heading }),
		rows: together,
	}));
}
