import type { WrongCell } from "../../../core/edit/bench/lineWritten.ts";
import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";
import type { EntryField } from "../store/entryField.ts";

/** Large fields over the page, and how they are closed. */
export interface BenchDialog {
	readonly dialog: HTMLDialogElement;
	readonly form: HTMLFormElement;
	close(): void;
}

/**
 * Opens a dialog with large fields. The main act is the form's own, so that Enter does it;
 * the focus goes back to where it came from.
 *
 * @param first what has the focus to begin with
 */
export function benchDialog(
	title: string,
	first: HTMLElement | undefined,
	...content: readonly Child[]
): BenchDialog {
	const close = () => dialog.close();
	const form = el("form", { class: "bench-form", novalidate: true }, ...content);
	const dialog = el(
		"dialog",
		{ class: "bench", "aria-label": title },
		el(
			"header",
			{ class: "bench-head" },
			el("h2", {}, title),
			el("button", { type: "button", class: "bench-close", onclick: close }, say`Close`),
		),
		form,
	);
	dialog.addEventListener("close", () => dialog.remove());
	document.body.append(dialog);
	dialog.showModal();
	first?.focus();
	return { dialog, form, close };
}

/** Says what is wrong beside each field, and goes to the first of them; what has no field of its own is in `rest`. */
export function showWrong(
	wrong: readonly WrongCell[],
	fields: Readonly<Record<string, EntryField>>,
	rest: HTMLElement,
): void {
	for (const [column, field] of Object.entries(fields))
		field.wrong(wrong.find((each) => each.column === column)?.words);
	rest.textContent = wrong
		.filter(({ column }) => fields[column] === undefined)
		.map(({ words }) => words)
		.join(" ");
	Object.values(fields)
		.find(({ control }) => control.hasAttribute("aria-invalid"))
		?.control.focus();
}

/** Where a wrong entry without a field of its own is said. */
export function reasonLine(): HTMLElement {
	return el("p", { class: "reason", role: "alert" });
}

/** The main act of a dialog, for a thumb. */
export function mainAct(words: string): HTMLButtonElement {
	return el("button", { type: "submit", class: "main bench-act" }, words);
}
