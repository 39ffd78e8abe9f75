import { say } from "../../core/say.ts";
import { el } from "../dom/el.ts";
import type { GridCell, GridModel } from "./gridModel.ts";

/** Draws one cell with text nodes only. Its state is in its shape and words as well as its colour. */
export function renderCell(td: HTMLElement, model: GridModel, row: number, column: number): void {
	const cell = model.cell(row, column);
	td.className = cellClasses(cell, model.columns[column]?.numeric ?? false, model.endsGroup?.(row));
	td.title = cell.problems?.[0]?.message ?? waitingWords(cell);
	td.replaceChildren();
	if (cell.problems?.length) td.append(el("span", { class: "problem-mark" }, "!"));
	td.append(el("span", { class: "figure" }, cell.text));
	if (cell.beneath) td.append(el("span", { class: "beneath" }, cell.beneath));
}

/** Why a cell shows a dash. */
export function waitingWords(cell: GridCell): string {
	for (const figure of cell.figures ?? [])
		if (!figure.outcome.ok) return say`Waits for: ${figure.outcome.problems[0]?.message ?? ""}`;
	return "";
}

export function cellClasses(cell: GridCell, numeric: boolean, endsGroup = false): string {
	const classes: (string | false | undefined)[] = [
		"cell",
		cell.kind,
		numeric && "numeric",
		cell.own && "own",
		cell.standIn && "stand-in",
		(cell.problems?.length ?? 0) > 0 && "bad",
		cell.waiting && "waiting",
		endsGroup && "group-end",
	];
	return classes.filter(Boolean).join(" ");
}
