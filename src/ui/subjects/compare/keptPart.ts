import { type KeptCopy, keptCopies } from "../../../core/edit/keptCopies.ts";
import { withCopyKept } from "../../../core/edit/withCopyKept.ts";
import { withCopyUsed } from "../../../core/edit/withCopyUsed.ts";
import { withoutCopy } from "../../../core/edit/withoutCopy.ts";
import { say } from "../../../core/say.ts";
import { keptSettingsSheet } from "../../../core/sheets/keptSettings.ts";
import { el, fill } from "../../dom/el.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { entryField } from "../store/entryField.ts";
import { trialOf } from "./trialOf.ts";

/** Where a copy of the settings is kept, taken back or deleted; each is one step that can be undone. */
export function keptPart({ store, tell }: Surroundings): SheetPart {
	const name = entryField(
		"kept-name",
		say`Name of the new copy`,
		el("input", { type: "text", autocomplete: "off" }),
	);
	const list = el("ul", { class: "kept-copies" });
	const submit = el("button", { type: "submit" });
	const form = el(
		"form",
		{ class: "keep-copy", "aria-label": say`Keep a copy of the settings`, novalidate: true },
		name.element,
		submit,
	);
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const { workbook } = store.state;
		const wrong = wrongName(workbook, name.control.value);
		name.wrong(wrong);
		if (wrong !== undefined) return name.control.focus();
		const kept = name.control.value.trim();
		name.control.value = "";
		const { workbook: tried, differing } = trialOf(store.state);
		store.edit(withCopyKept(workbook, kept, tried));
		tell([
			differing.length === 0
				? say`“${kept}” is kept in this workbook. Now change settings or rounds, and compare.`
				: say`“${kept}” is kept in this workbook: settings and rounds, without the births, the kits and the steps that you try.`,
		]);
	});
	const use = (copy: KeptCopy) => {
		store.edit(withCopyUsed(store.state.workbook, copy));
		tell([
			say`The settings and rounds of “${copy.name}” stand in the workbook now. Undo takes them out again.`,
		]);
	};
	const remove = (copy: KeptCopy) => {
		store.edit(withoutCopy(store.state.workbook, copy.name));
		tell([say`The copy “${copy.name}” is deleted. Undo brings it back.`]);
		name.control.focus();
	};
	const button = (words: string, label: string, act: () => void, disabled = false) =>
		el("button", { type: "button", "aria-label": label, onclick: act, disabled }, words);
	const line = (copy: KeptCopy) =>
		el(
			"li",
			{},
			el("strong", {}, copy.name),
			button(
				say`Use this copy`,
				say`Use this copy: ${copy.name}`,
				() => use(copy),
				copy.problems.length > 0,
			),
			button(say`Delete the copy`, say`Delete the copy: ${copy.name}`, () => remove(copy)),
		);
	return {
		element: el(
			"section",
			{ class: "kept-part", "aria-labelledby": "kept-title" },
			el("h2", { id: "kept-title" }, say`Kept copies`),
			el(
				"p",
				{ class: "hint" },
				say`A copy of the settings and rounds under a name stands in the workbook and is saved with it.`,
			),
			form,
			list,
		),
		paint(state: State) {
			submit.textContent =
				trialOf(state).differing.length > 0
					? say`Keep what you try under this name`
					: say`Keep a copy of the settings as they are now`;
			fill(list, ...keptCopies(state.workbook).map(line));
		},
	};
}

function wrongName(workbook: State["workbook"], typed: string): string | undefined {
	const { value } = keptSettingsSheet.columns.name;
	if (!value.schema.safeParse(typed).success)
		return say`The copy needs a name; allowed is ${value.allowed}.`;
	if (keptCopies(workbook).some((copy) => copy.name === typed.trim()))
		return say`A copy of this name is kept already: choose another name, or delete that one first.`;
	return undefined;
}
