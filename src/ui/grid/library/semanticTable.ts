import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { soon } from "../../dom/soon.ts";
import { problemWords } from "../../format/problemWords.ts";
import type { GridModel } from "../gridModel.ts";
import { cellClasses } from "./renderCell.ts";

/** Rows beyond these are left out of the plain table; the saved file has them all. */
const MOST_ROWS = 1000;

const ROWS_AT_ONCE = 20;

/** A day, a time, a mark: what is so short is not broken. */
const SHORT = 13;

/** A cell of the table, and what it was made from. */
interface Drawn {
	readonly from: string;
	readonly element: HTMLElement;
}

/**
 * The same cells as a plain table: for screen readers, for reading at any zoom, for paper.
 * Cells whose words stay the same are left alone.
 */
export class SemanticTable {
	readonly element = el("table", { class: "plain-table" });
	readonly #caption = el("caption");
	#head = "";
	#rows: Drawn[][] = [];

	/** It is brought up to date when the grid has been painted, for which the person who typed waits, and says so until then. */
	show(model: GridModel): void {
		this.element.setAttribute("aria-busy", "true");
		const drawing = this.#draw(model);
		soon(this.element, () => {
			if (!drawing.next().done) return true;
			this.element.removeAttribute("aria-busy");
			return false;
		});
	}

	/** A few rows at a time. */
	*#draw(model: GridModel): Generator<void> {
		const last = Math.min(model.rowCount, MOST_ROWS);
		const left = model.rowCount - last;
		this.#caption.textContent =
			left > 0 ? say`${model.name} (${left} more rows are in the file)` : model.name;
		const head = headOf(model);
		const isSame = head.from === this.#head && last === this.#rows.length;
		const rows: Drawn[][] = [];
		while (rows.length < last) {
			const row = rows.length;
			rows.push(cellsOf(model, row, isSame ? this.#rows[row] : undefined));
			if (isSame) this.#rows[row] = rows[row] as Drawn[];
			if (rows.length % ROWS_AT_ONCE === 0) yield;
		}
		if (isSame) return;
		this.#rows = rows;
		this.#head = head.from;
		const lines = rows.map((cells) => el("tr", {}, ...cells.map(({ element }) => element)));
		const body = el("tbody");
		body.append(...lines);
		fill(this.element, this.#caption, el("thead", {}, head.element), body);
	}
}

function headOf(model: GridModel): Drawn {
	const from = [!!model.rowName, ...model.columns.flatMap(({ label, unit }) => [label, unit])];
	const element = el(
		"tr",
		{},
		model.rowName && el("th", { scope: "col", class: "line-name" }, say`Line`),
		...model.columns.map((column) =>
			el(
				"th",
				{ scope: "col", class: column.numeric ? "numeric" : undefined },
				column.label,
				column.unit !== "" && el("span", { class: "head-unit" }, ` ${column.unit}`),
			),
		),
	);
	return { from: from.join("\n"), element };
}

/** The cells of a row; one that says something else than before takes the place of the one there. */
function cellsOf(model: GridModel, row: number, before: readonly Drawn[] | undefined): Drawn[] {
	const parts: CellParts[] = model.columns.map((column, at) => {
		const { text, beneath = "", problems = [], ...state } = model.cell(row, at);
		const classes = cellClasses(
			{ ...state, text, problems },
			column.numeric,
			model.endsGroup?.(row),
		);
		const tag = at === 0 && text !== "" ? "th" : "td";
		const short = tag === "td" && text.length <= SHORT ? " short" : "";
		return {
			tag,
			classes: classes + short,
			text,
			beneath,
			wrong: problems[0] ? problemWords(problems[0]) : "",
		};
	});
	if (model.rowName)
		parts.unshift({
			tag: "td",
			classes: "line-name",
			text: model.rowName(row),
			beneath: "",
			wrong: "",
		});
	return parts.map((part, at) => {
		const from = Object.values(part).join("\n");
		const old = before?.[at];
		if (old?.from === from) return old;
		const element = cellElement(part);
		old?.element.replaceWith(element);
		return { from, element };
	});
}

interface CellParts {
	readonly tag: "th" | "td";
	readonly classes: string;
	readonly text: string;
	readonly beneath: string;
	/** What is wrong with it, in words. */
	readonly wrong: string;
}

function cellElement({ tag, classes, text, beneath, wrong }: CellParts): HTMLElement {
	return el(
		tag,
		{ class: classes, scope: tag === "th" ? "row" : undefined },
		wrong !== "" && el("span", { class: "problem-mark" }, "!"),
		el("span", { class: "figure" }, text),
		beneath !== "" && el("span", { class: "beneath" }, beneath),
		wrong !== "" && el("span", { class: "reason" }, wrong),
	);
}
