import { say } from "../../core/say.ts";
import { el, fill } from "../dom/el.ts";
import { problemWords } from "../format/problemWords.ts";
import { shownChoice } from "../format/shownChoice.ts";
import type { Entry, GridCell } from "../grid/gridModel.ts";

/**
 * Shows what a cell is for and lets it be filled in here as well: on a phone,
 * and for who would rather not work in the grid.
 */
export function entryPane(pane: HTMLElement, cell: GridCell, write: (text: string) => void): void {
	const { entry } = cell;
	fill(pane);
	if (!entry) return;
	const text = cell.raw ?? cell.text;
	const field = entry.options
		? optionField(entry.options, text)
		: el("input", { id: "entry-field", type: "text", value: text, autocomplete: "off" });
	field.setAttribute("aria-describedby", "entry-help");
	field.addEventListener("change", () => {
		written(field);
		write(field.value);
	});
	fill(
		pane,
		el("h2", {}, say`This cell`),
		el(
			"p",
			{},
			el("label", { for: "entry-field", class: "entry-label" }, entry.label),
			entry.unit !== "" && el("span", { class: "unit" }, ` ${entry.unit}`),
		),
		field,
		...(cell.problems ?? []).map((p) => el("p", { class: "reason" }, problemWords(p))),
		el("div", { id: "entry-help" }, ...helpOf(entry)),
	);
}

/** Whether somebody is typing in the field and what they typed is written nowhere yet. */
export function isBeingTyped(pane: HTMLElement): boolean {
	const field = document.activeElement;
	if (!(field instanceof HTMLInputElement) || !pane.contains(field)) return false;
	return field.value !== field.defaultValue;
}

/** From now on the field may be drawn anew with what the cell holds. */
function written(field: HTMLInputElement | HTMLSelectElement): void {
	if (field instanceof HTMLInputElement) field.defaultValue = field.value;
}

function optionField(options: readonly string[], text: string): HTMLSelectElement {
	const kept = text !== "" && !options.includes(text) ? [text] : [];
	const field = el(
		"select",
		{ id: "entry-field" },
		...["", ...options, ...kept].map((option) =>
			el("option", { value: option }, shownChoice(option, options)),
		),
	);
	field.value = text;
	return field;
}

function helpOf(entry: Entry): HTMLElement[] {
	const { options } = entry;
	const allowed = options
		? say`one of: ${options.map((option) => shownChoice(option, options)).join(", ")}`
		: entry.allowed;
	const lines = [el("p", {}, entry.help), el("p", {}, say`Allowed: ${allowed}.`)];
	if (entry.blank !== undefined) lines.push(el("p", {}, say`Blank means ${entry.blank}.`));
	return lines;
}
