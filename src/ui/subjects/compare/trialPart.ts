import { furtherEntries, usualEntries } from "../../../core/edit/trial/trialEntries.ts";
import { say } from "../../../core/say.ts";
import { settingGroups } from "../../../core/sheets/settings.ts";
import { el, fill } from "../../dom/el.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { entryField } from "../store/entryField.ts";
import { entryOf, type TrialField, trialField } from "./trialField.ts";
import { textsTried, throwAway, trialOf, tryText } from "./trialOf.ts";

/** The part of the page on which a copy is tried. */
export interface TrialPart extends SheetPart {
	/** Goes to the field of an entry. */
	show(key: string): void;
}

/**
 * A copy of the workbook to try things on: nothing of the workbook changes until it is used,
 * and then as one step.
 *
 * @param changed told after each change of what is tried
 */
export function trialPart({ store, tell }: Surroundings, changed: () => void): TrialPart {
	const fields: TrialField[] = [];
	const list = el("div", { class: "trial-fields" });
	const further = entryField("trial-further", say`Another setting`, furtherList());
	const use = el("button", { type: "button", class: "main" }, say`Use this`);
	const away = el("button", { type: "button" }, say`Throw away`);
	const ending = el("p", { class: "choices-row" }, use, away);

	function fieldOf(key: string): TrialField | undefined {
		const entry = entryOf(key);
		const there = fields.find((field) => field.entry === entry);
		if (there || !entry) return there;
		const field = trialField(entry, (text) => {
			const isAsItWas = text.trim() === entry.read(store.state.workbook);
			tryText(store.state, key, isAsItWas ? undefined : text);
			part.paint(store.state);
			changed();
		});
		fields.push(field);
		list.append(field.element);
		return field;
	}
	const begun = () => {
		part.paint(store.state);
		changed();
		fields[0]?.control.focus();
	};
	use.addEventListener("click", () => {
		const { state } = store;
		const { workbook, differing } = trialOf(state);
		throwAway(state);
		store.edit(workbook);
		const names = differing.map((key) => entryOf(key)?.label ?? key);
		tell([say`Used: ${names.join(", ")}. Undo takes it out of the workbook again.`]);
		begun();
	});
	away.addEventListener("click", () => {
		throwAway(store.state);
		tell([say`What was tried is thrown away; the workbook is as it was.`]);
		begun();
	});
	further.control.addEventListener("change", () => {
		const field = fieldOf(further.control.value);
		further.control.value = "";
		part.paint(store.state);
		field?.control.focus();
	});
	const part: TrialPart = {
		element: el(
			"section",
			{ class: "trial", "aria-labelledby": "trial-title" },
			el("h2", { id: "trial-title" }, say`A copy to try things on`),
			list,
			further.element,
			ending,
		),
		paint(state: State) {
			const texts = textsTried(state);
			for (const key of texts.keys()) fieldOf(key);
			const { differing, refused } = trialOf(state);
			for (const { entry, paint } of fields)
				paint(state.workbook, texts.get(entry.key), refused.get(entry.key));
			ending.hidden = differing.length === 0;
		},
		show: (key) => fieldOf(key)?.control.focus(),
	};
	for (const { key } of usualEntries) fieldOf(key);
	return part;
}

/** Every other setting, by subject. */
function furtherList(): HTMLSelectElement {
	const select = el("select", {});
	const choices = settingGroups.map(({ title, keys }) =>
		el(
			"optgroup",
			{ label: title },
			...furtherEntries
				.filter(({ key }) => keys.includes(key))
				.map(({ key, label }) => el("option", { value: key }, label)),
		),
	);
	fill(select, el("option", { value: "" }, say`Choose`), ...choices);
	return select;
}
