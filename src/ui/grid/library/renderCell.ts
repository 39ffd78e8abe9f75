import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { wordsOf } from "../../dom/wordsOf.ts";
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

/** What each cell on the screen shows, and where it stands, to leave alone what stays the same. */
const drawn = new WeakMap<HTMLElement, { what: Drawing; row: number; column: number }>();

/** Draws one cell with text nodes only. Its state is in its shape and words as well as its colour. */
export function renderCell(td: HTMLElement, model: GridModel, row: number, column: number): void {
	const what = drawing(model, row, column);
	drawn.set(td, { what, row, column });
	td.className = what.classes;
	td.title = what.title;
	drawWords(td, what);
}

/** Draws of a cell anew what it shows otherwise now; marks of the selection stay on it. */
export function redrawCell(td: HTMLElement, model: GridModel): void {
	const cell = drawn.get(td);
	if (!cell) return;
	const { what: before } = cell;
	const next = drawing(model, cell.row, cell.column);
	cell.what = next;
	if (next.title !== before.title) td.title = next.title;
	if (next.classes !== before.classes) {
		td.classList.remove(...before.classes.split(" "));
		td.classList.add(...next.classes.split(" "));
	}
	if (isSameShape(before, next)) redrawWords(td, before, next);
	else drawWords(td, next);
}

function isSameShape(a: Drawing, b: Drawing): boolean {
	return a.isWrong === b.isWrong && (a.beneath === "") === (b.beneath === "");
}

function drawWords(td: HTMLElement, { isWrong, text, beneath }: Drawing): void {
	td.replaceChildren();
	if (isWrong) td.append(el("span", { class: "problem-mark" }, "!"));
	td.append(el("span", { class: "figure" }, text));
	if (beneath) td.append(el("span", { class: "beneath" }, beneath));
}

/** The browser lays out and styles no more than the words that are others. */
function redrawWords(td: HTMLElement, before: Drawing, { isWrong, text, beneath }: Drawing): void {
	const figure = td.children[isWrong ? 1 : 0];
	const under = figure?.nextElementSibling;
	if (figure && text !== before.text) rewrite(figure, text);
	if (under && beneath !== before.beneath) rewrite(under, beneath);
}

/** A text that stays one is changed in its place; words in two languages are elements. */
function rewrite(element: Element, text: string): void {
	const only = element.firstChild;
	const words = wordsOf(text, element);
	if (only instanceof Text && !only.nextSibling && words.every((word) => word === text))
		only.data = text;
	else element.replaceChildren(...words);
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
