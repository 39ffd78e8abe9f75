import type { Delivery } from "../../../core/edit/store/orderReceived.ts";
import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { entryField } from "../store/entryField.ts";

export type ReceiveForm = ReturnType<typeof receiveForm>;

/** The form for an order that comes: its fields, and how to read them. */
export function receiveForm() {
	const text = (props = {}) => el("input", { type: "text", autocomplete: "off", ...props });
	const date = () => el("input", { type: "date" });
	const unit = el("span", { class: "unit" }, " ", say`packs`);
	const fields = {
		order: entryField("order", say`Which order`, el("select")),
		packs: entryField("packs", say`Received`, text({ inputmode: "decimal" }), unit),
		lot: entryField("lot", say`Lot on the box or bottle`, text()),
		expires: entryField("expires", say`Expires on`, date()),
		made: entryField("made", say`Made on, if the label says`, date()),
		day: entryField("day", say`Day`, date()),
	};
	const restBox = el("input", { type: "checkbox", checked: true });
	const rest = el(
		"fieldset",
		{ hidden: true },
		el("label", {}, restBox, say`The rest is still to come`),
	);
	const giveUp = el("button", { type: "button" }, say`Give this order up`);
	const form = el(
		"form",
		{ class: "store-entry receive", "aria-label": say`Receive an order`, novalidate: true },
		...Object.values(fields).map((field) => field.element),
		rest,
		el("button", { type: "submit", class: "main" }, say`Received`),
		giveUp,
	);
	const read = (): Delivery => ({
		line: Number(fields.order.control.value),
		packs: fields.packs.control.value,
		day: fields.day.control.value,
		lot: fields.lot.control.value,
		made: fields.made.control.value,
		expires: fields.expires.control.value,
		restToCome: restBox.checked && !rest.hidden,
	});
	return { form, fields, rest, giveUp, read };
}
