import type { Figure } from "../../core/calculation.ts";
import type { AnyTable } from "../../core/computedTable.ts";
import { shownCell } from "../format/shownFigure.ts";
import { columnWidth } from "./columnWidth.ts";
import type { GridCell, GridModel } from "./gridModel.ts";
import { GrowingHeights } from "./growingHeights.ts";
import { headHeight, heightsBy } from "./rowHeights.ts";

const SAMPLED_ROWS = 60;

/** A sheet that the plan fills in: locked, and every cell can be asked "why?". Of a long one only the first rows are looked at before it stands. */
export function computedGrid({ sheet, rows }: AnyTable): GridModel {
	const keys = Object.keys(sheet.columns).filter(
		(key) => !(sheet.columns[key]?.ifAny && isBlank(rows[0]?.[key])),
	);
	const shown = (row: number, key: string) => {
		const column = sheet.columns[key];
		const figure = rows[row]?.[key];
		if (!column || !figure) return "";
		return shownCell(column, figure);
	};
	const columns = keys.map((key) => {
		const { label = key, unit = "", value } = sheet.columns[key] ?? {};
		const sample = rows.slice(0, SAMPLED_ROWS).map((_, row) => shown(row, key));
		return {
			key,
			label,
			unit,
			numeric: value?.numeric ?? false,
			width: columnWidth(label, unit, sample),
		};
	});
	const heightOf = heightsBy(columns, (row, at) => shown(row, keys[at] ?? ""));
	const heights = new GrowingHeights(rows.length, SAMPLED_ROWS, heightOf);
	return {
		name: sheet.title,
		columns,
		rowCount: rows.length,
		headerHeight: headHeight(columns),
		rowHeight: (row) => heights.of(row),
		...(rows.length > SAMPLED_ROWS && { measureOn: () => heights.measureOn() }),
		value(row, at) {
			const figure = rows[row]?.[keys[at] ?? ""];
			return figure?.outcome.ok && !isBlank(figure) ? figure.outcome.value : undefined;
		},
		cell(row, at): GridCell {
			const key = keys[at] ?? "";
			const figure = rows[row]?.[key];
			if (!figure) return { kind: "computed", text: "" };
			return {
				kind: "computed",
				text: shown(row, key),
				waiting: !figure.outcome.ok,
				figures: [figure],
			};
		},
	};
}

function isBlank(figure: Figure<unknown> | undefined): boolean {
	const { outcome } = figure ?? {};
	return outcome?.ok === true && (outcome.value === "" || outcome.value === null);
}
