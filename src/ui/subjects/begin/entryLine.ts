import { methodEntry } from "../../../core/edit/begin/beginEntries.ts";
import { isAsked, isGiven } from "../../../core/edit/begin/beginEntry.ts";
import { TAKEN } from "../../../core/edit/begin/stepsEntry.ts";
import { methods } from "../../../core/methods/method.ts";
import { say } from "../../../core/say.ts";
import { settings } from "../../../core/sheets/settings.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el, fill } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { levelWords } from "../../format/levelWords.ts";
import { entryField } from "../store/entryField.ts";
import { proposalTable } from "./proposalTable.ts";
import type { ShownEntry } from "./shownEntries.ts";
import { type UsesTable, usesTable } from "./usesTable.ts";

/** One entry on the page: its field, what it is for, and whether it is given. */
export interface EntryLine {
	readonly entry: ShownEntry;
	readonly element: HTMLElement;
	readonly control: HTMLElement;
	paint(workbook: Workbook): void;
}

/** What the page does with a line. */
export interface LineEvents {
	/** The workbook with the text in it; words where it cannot be entered. */
	enter(entry: ShownEntry, text: string): string | undefined;
	/** The person goes on to the next entry. */
	next(entry: ShownEntry): void;
}

export function entryLine(entry: ShownEntry, events: LineEvents): EntryLine {
	const line =
		entry.control === "proposal" ? proposalLine(entry, events) : fieldLine(entry, events);
	return {
		...line,
		paint(workbook) {
			line.element.hidden = !isAsked(entry, workbook);
			line.paint(workbook);
		},
	};
}

function fieldLine(entry: ShownEntry, { enter, next }: LineEvents): EntryLine {
	const control = controlOf(entry);
	const unit = el("span", { class: "unit" });
	const field = entryField(`begin-${entry.key}`, entry.label, control, " ", unit);
	const help = el("p", { class: "begin-help", id: `begin-help-${entry.key}` });
	control.setAttribute(
		"aria-describedby",
		`${control.getAttribute("aria-describedby")} ${help.id}`,
	);
	const mark = el("span", { class: "begin-mark" });
	let refused: string | undefined;
	const commit = (isDone = true) => {
		const words = enter(entry, control.value);
		if (!isDone && words !== undefined) return false;
		refused = words === undefined ? undefined : control.value;
		field.wrong(words);
		return words === undefined;
	};
	// A date that is typed changes with every digit of its year: it is judged when the field is left.
	control.addEventListener("change", () => commit(entry.control !== "date"));
	control.addEventListener("blur", () => commit());
	control.addEventListener("keydown", (event) => {
		if ((event as KeyboardEvent).key !== "Enter") return;
		event.preventDefault();
		if (commit()) next(entry);
	});
	return {
		entry,
		control,
		element: el(
			"li",
			{ class: entry.isFilled ? "begin-line filled" : "begin-line" },
			field.element,
			help,
			mark,
		),
		paint(workbook) {
			unit.textContent = entry.unit(workbook);
			fill(help, ...helpWords(entry, workbook));
			paintMark(mark, isGiven(entry, workbook));
			const text = entry.read(workbook);
			// What was refused stays to be put right, unless something else has been entered since.
			if (refused !== undefined && control.value === refused) return;
			if (control.value !== text && !isBeingTyped(control)) setText(control, text);
			field.spell();
		},
	};
}

function controlOf({ control, options = [] }: ShownEntry): HTMLInputElement | HTMLSelectElement {
	if (control === "choice")
		return el(
			"select",
			{},
			...[["", say`Choose`] as const, ...options].map(([value, words]) =>
				el("option", { value }, words),
			),
		);
	return el("input", { type: control === "date" ? "date" : "text", autocomplete: "off" });
}

function helpWords(entry: ShownEntry, workbook: Workbook): HTMLElement[] {
	const words = [entry.help, say`Allowed: ${entry.allowed(workbook)}.`];
	if (entry.blank !== undefined) words.push(say`Blank means ${entry.blank}.`);
	return words.map((each) => el("span", {}, `${each} `));
}

/** Text that came from the workbook is what the field began with: Ctrl+Z in it then undoes the entry. */
function setText(control: HTMLInputElement | HTMLSelectElement, text: string): void {
	if (control instanceof HTMLInputElement) control.defaultValue = text;
	else if (![...control.options].some(({ value }) => value === text))
		control.append(el("option", { value: text }, text));
	control.value = text;
}

function isBeingTyped(control: HTMLInputElement | HTMLSelectElement): boolean {
	return (
		control instanceof HTMLInputElement &&
		control === document.activeElement &&
		control.value !== control.defaultValue
	);
}

function paintMark(mark: HTMLElement, given: boolean): void {
	mark.textContent = given ? say`✓ entered` : say`to enter`;
	mark.classList.toggle("given", given);
}

const methodShown: ShownEntry = { ...methodEntry, control: "choice" };

/** By which method steps are proposed; and what it does, and does not do. */
function methodChoice(enter: (text: string) => void) {
	const select = el(
		"select",
		{ id: "begin-method" },
		...methods.map((code) => el("option", { value: code }, shownWord(code))),
	);
	const level = el("p", { class: "begin-help" });
	select.addEventListener("change", () => enter(select.value));
	return {
		element: el(
			"div",
			{},
			el("label", { for: "begin-method" }, methodEntry.label),
			" ",
			select,
			level,
		),
		/** @returns the method chosen */
		paint(workbook: Workbook): string {
			const text = methodEntry.read(workbook).toLowerCase();
			const chosen = methods.find((code) => code === text) ?? settings.method.fallback;
			select.value = chosen ?? "";
			level.textContent = chosen ? levelWords([chosen]) : "";
			return select.value;
		},
	};
}

function proposalLine(entry: ShownEntry, { enter, next }: LineEvents): EntryLine {
	const control = el(
		"button",
		{ type: "button", class: "main" },
		say`Take the steps, and what is ticked, as a beginning`,
	);
	const said = el("p", { class: "begin-said", role: "status" });
	const table = el("div", {});
	let uses: UsesTable | undefined;
	const method = methodChoice((text) => enter(methodShown, text));
	let proposedFor: string | undefined;
	const mark = el("span", { class: "begin-mark" });
	control.addEventListener("click", () => {
		enter(entry, [TAKEN, uses?.choice()].filter(Boolean).join(" "));
		next(entry);
	});
	return {
		entry,
		control,
		element: el(
			"li",
			{ class: "begin-line" },
			el(
				"div",
				{ class: "entry-field" },
				el("strong", { class: "begin-name" }, entry.label),
				method.element,
				control,
				said,
			),
			el("p", { class: "begin-help" }, entry.help),
			mark,
			table,
		),
		paint(workbook) {
			const text = entry.read(workbook);
			control.hidden = text !== "";
			said.textContent = text;
			paintMark(mark, text !== "");
			const chosen = method.paint(workbook);
			method.element.hidden = text !== "";
			if (text !== "") fill(table);
			else if (proposedFor !== chosen) {
				uses = usesTable(workbook);
				fill(table, proposalTable(workbook), uses?.element);
			}
			proposedFor = text === "" ? chosen : undefined;
		},
	};
}
