import type { StoreEntry } from "../../../core/edit/store/storeEntry.ts";
import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { entryField } from "./entryField.ts";

/** Stands in the list of lots for one that is not in the books yet. */
export const NEW_LOT = "\u0000new";

const kinds = [
	["count", say`Counted`],
	["receipt", say`Received`],
	["issue", say`Issued`],
	["loss", say`Lost: spoiled, expired, broken`],
] as const;

export type StoreEntryForm = ReturnType<typeof storeEntryForm>;

/** The form for what was counted, received, issued or lost: its fields, and how to read them. */
export function storeEntryForm() {
	const text = (props = {}) => el("input", { type: "text", autocomplete: "off", ...props });
	const measure = el("span", { class: "unit" });
	const fields = {
		item: entryField("item", say`Item`, el("select")),
		lot: entryField("lot", say`Lot`, el("select")),
		newLot: entryField("new-lot", say`Number of the new lot`, text()),
		made: entryField("made", say`Made on, if the label says`, el("input", { type: "date" })),
		expires: entryField("expires", say`Expires on`, el("input", { type: "date" })),
		day: entryField("day", say`Day`, el("input", { type: "date" })),
		quantity: entryField("quantity", say`How much`, text({ inputmode: "decimal" }), " ", measure),
		note: entryField("note", say`By whom, why`, text()),
	};
	const radios = kinds.map(([value, words], at) =>
		el(
			"label",
			{},
			el("input", { type: "radio", name: "store-kind", value, checked: at === 0 }),
			words,
		),
	);
	const form = el(
		"form",
		{
			class: "store-entry",
			"aria-label": say`Enter a count, a receipt, an issue or a loss`,
			novalidate: true,
		},
		el("fieldset", {}, el("legend", {}, say`Enter what was`), ...radios),
		...Object.values(fields).map((field) => field.element),
		el("button", { type: "submit", class: "main" }, say`Enter it`),
	);
	const kind = () =>
		(form.querySelector<HTMLInputElement>("input[name=store-kind]:checked")?.value ??
			"count") as StoreEntry["kind"];
	const isNew = () => fields.lot.control.value === NEW_LOT;
	const read = (): StoreEntry => ({
		kind: kind(),
		item: fields.item.control.value,
		lot: isNew() ? fields.newLot.control.value : fields.lot.control.value,
		isNew: isNew(),
		day: fields.day.control.value,
		quantity: fields.quantity.control.value,
		note: fields.note.control.value,
		expires: fields.expires.control.value,
		made: fields.made.control.value,
	});
	return { form, fields, measure, kind, isNew, read };
}
