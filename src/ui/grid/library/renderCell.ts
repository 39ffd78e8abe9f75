import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { problemWords } from "../../format/problemWords.ts";
import type { GridCell, GridModel } from "../gridModel.ts";

/** What is seen of a cell. */
interface Drawing {
	readonly classes: string;
	readonly title: string;
	readonly isWrong: boolean;
	readonly text: string;
	readonly beneath: string;
}

function drawing(model: GridModel, row: number, column: number): Drawing {
	const cell = model.cell(row, column);
	return {
		classes: cellClasses(cell, model.columns[column]?.numeric ?? false, model.endsGroup?.(row)),
		title: cell.problems?.[0] ? problemWords(cell.problems[0]) : waitingWords(cell),
		isWrong: (cell.problems?.length ?? 0) > 0,
		text: cell.text,
		beneath: cell.beneath ?? "",
	};
}

/** What each cell on the screen shows, to leave alone what stays the same. */
const drawn = new WeakMap<HTMLElement, Drawing>();

/** Draws one cell with text nodes only. Its state is in its shape and words as well as its colour. */
export function renderCell(td: HTMLElement, model: GridModel, row: number, column: number): void {
	draw(td, drawing(model, row, column));
}

/** Draws a cell anew where it shows something else now; marks of the selection stay on it. */
export function redrawCell(td: HTMLElement, model: GridModel, row: number, column: number): void {
	const next = drawing(model, row, column);
	const before = drawn.get(td);
	if (before && isSame(before, next)) return;
	const own = new Set(before?.classes.split(" "));
	const marks = [...td.classList].filter((name) => !own.has(name));
	draw(td, next);
	td.classList.add(...marks);
}

function draw(td: HTMLElement, what: Drawing): void {
	drawn.set(td, what);
	td.className = what.classes;
	td.title = what.title;
	td.replaceChildren();
	if (what.isWrong) td.append(el("span", { class: "problem-mark" }, "!"));
	td.append(el("span", { class: "figure" }, what.text));
	if (what.beneath) td.append(el("span", { class: "beneath" }, what.beneath));
}

function isSame(a: Drawing, b: Drawing): boolean {
	return (Object.keys(a) as (keyof Drawing)[]).every((part) => a[part] === b[part]);
}

/** Why a cell shows a dash. */
function waitingWords(cell: GridCell): string {
	for (const figure of cell.figures ?? [])
		if (!figure.outcome.ok)
			return say`Needs: ${figure.outcome.problems.slice(0, 1).map(problemWords).join("")}`;
	return "";
}

export function cellClasses(cell: GridCell, numeric: boolean, endsGroup = false): string {
	const classes: (string | false | undefined)[] = [
		"cell",
		cell.kind,
		numeric && "numeric",
		cell.own && "own",
		cell.standIn && "stand-in",
		cell.heading && "heading",
		(cell.problems?.length ?? 0) > 0 && "bad",
		cell.waiting && "waiting",
		endsGroup && "group-end",
	];
	return classes.filter(Boolean).join(" ");
}
