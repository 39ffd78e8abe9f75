import type { Column } from "../../../core/column.ts";
import type { BeginEntry } from "../../../core/edit/begin/beginEntry.ts";
import { trialEntries } from "../../../core/edit/trial/trialEntries.ts";
import { say } from "../../../core/say.ts";
import { settings } from "../../../core/sheets/settings.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownDefault } from "../../format/shownDefault.ts";
import { shownTyped } from "../../format/shownTyped.ts";
import { entryField } from "../store/entryField.ts";

/** One thing that can be tried: its field, and what the workbook has. */
export interface TrialField {
	readonly entry: BeginEntry;
	readonly element: HTMLElement;
	readonly control: HTMLElement;
	/** @param tried absent where nothing is tried */
	paint(workbook: Workbook, tried: string | undefined, refused: string | undefined): void;
}

/** @param changed told what is typed or chosen */
export function trialField(entry: BeginEntry, changed: (text: string) => void): TrialField {
	const column = Object.hasOwn(settings, entry.key)
		? (settings[entry.key as keyof typeof settings] as Column<unknown>)
		: undefined;
	const options = column?.value.options;
	const control = options
		? el("select", {}, ...options.map((code) => el("option", { value: code }, shownWord(code))))
		: el("input", { type: "text", autocomplete: "off" });
	const unit = el("span", { class: "unit" });
	const field = entryField(`trial-${entry.key}`, entry.label, control, " ", unit);
	const now = el("span", { class: "trial-now", id: `trial-now-${entry.key}` });
	control.setAttribute("aria-describedby", `${control.getAttribute("aria-describedby")} ${now.id}`);
	control.addEventListener("change", () => changed(control.value));
	const help = el("span", { class: "trial-help" }, entry.help);
	field.element.append(now, help);
	const fallback = column ? shownDefault(column) : "";
	return {
		entry,
		control,
		element: field.element,
		paint(workbook, tried, refused) {
			const text = entry.read(workbook);
			unit.textContent = entry.unit(workbook);
			const isTried = tried !== undefined && tried.trim() !== text && refused === undefined;
			// A choice left blank shows the default that holds.
			const held = text === "" && options && column ? column.value.write(column.fallback) : text;
			control.value = tried ?? held;
			const shown = text === "" ? fallback || say`blank` : shownTyped(text, column?.value);
			if (isTried) now.textContent = say`Changed; in the workbook: ${shown}`;
			else
				now.textContent =
					text === "" && fallback !== ""
						? say`As in the workbook: ${fallback}`
						: say`As in the workbook`;
			help.hidden = !isTried;
			field.element.classList.toggle("tried", isTried);
			field.wrong(refused);
		},
	};
}

/** The entry of a key. */
export function entryOf(key: string): BeginEntry | undefined {
	return trialEntries.find((each) => each.key === key);
}
