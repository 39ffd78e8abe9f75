import { say } from "../../core/say.ts";
import { el, fill } from "../dom/el.ts";
import type { GridCell } from "../grid/gridModel.ts";
import { shownKey } from "../shell/keyList.ts";
import { cellPane, type PaneActs } from "./cellPane.ts";
import { isBeingTyped } from "./entryPane.ts";

/** Closed by the person, it stays away on every sheet of this visit until it is asked for again. */
let sentAway = false;

/**
 * The margin that explains the selected cell. It takes no room until a cell is asked: beside
 * the grid on a wide screen, over the foot of a narrow one.
 */
export class CellAside {
	readonly element = el("aside", {
		class: "pane",
		hidden: true,
		"aria-label": say`About the selected cell`,
	});
	readonly button = el(
		"button",
		{ type: "button", "aria-expanded": "false", title: shownKey("Alt+Enter") },
		say`Why this number?`,
	);
	readonly #onTypedSheet: boolean;
	readonly #acts: PaneActs;
	readonly #back: () => void;
	readonly #head: HTMLElement;
	readonly #body = el("div", {});
	#cell: GridCell | undefined;

	/** @param back gives the focus back to the cell that was asked */
	constructor(onTypedSheet: boolean, acts: PaneActs, back: () => void) {
		this.#onTypedSheet = onTypedSheet;
		this.#acts = acts;
		this.#back = back;
		if (onTypedSheet) this.button.textContent = say`About this cell`;
		this.#head = el(
			"p",
			{ class: "pane-head" },
			el(
				"button",
				{ type: "button", class: "quiet", onclick: () => this.close(), title: shownKey("Escape") },
				say`Back to the cells`,
			),
		);
		fill(this.element, this.#head, this.#body);
		this.button.addEventListener("click", () => (this.isOpen ? this.close() : this.ask()));
		this.element.addEventListener("keydown", (event) => {
			if (event.key === "Escape") this.close();
		});
	}

	get isOpen(): boolean {
		return !this.element.hidden;
	}

	/** A person moved to a cell: a number says why it is what it is, unless the margin was sent away. */
	moved(cell: GridCell | undefined): void {
		this.paint(cell);
		if (!sentAway && cell && asksByItself(cell)) this.#open(true);
	}

	/** What is being typed here stays: it is written, and all drawn anew, when the person is done. */
	paint(cell: GridCell | undefined): void {
		this.#cell = cell;
		if (this.isOpen && !isBeingTyped(this.#body)) this.#draw();
	}

	/** Opens it and goes into it. */
	ask(): void {
		sentAway = false;
		this.#open(true);
		this.#head.querySelector("button")?.focus();
	}

	/** Opens it beside the cell a person was led to; the focus stays there. */
	lead(): void {
		this.#open(true);
	}

	close(): void {
		sentAway = true;
		this.#open(false);
		this.#back();
	}

	#open(open: boolean): void {
		if (open && !this.isOpen) this.#draw();
		this.element.hidden = !open;
		this.button.setAttribute("aria-expanded", String(open));
	}

	#draw(): void {
		cellPane(this.#body, this.#onTypedSheet, this.#cell, this.#acts);
	}
}

/** Numbers explain themselves, and so does what is wrong; a finger has no other way to fill a cell in at ease. */
function asksByItself({ kind, figures, problems }: GridCell): boolean {
	if (figures?.length || problems?.length) return true;
	return kind === "typed" && matchMedia("(pointer: coarse)").matches;
}
