import {
	depotPacksOf,
	moneyEntry,
	withDepotPacks,
} from "../../../core/edit/store/withDepotPacks.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type EntryField, entryField } from "../store/entryField.ts";
import { orderLines } from "./orderLines.ts";

/** Where the money for the order is entered, and what the depot sends of each item. */
export function limitsPart({ store }: Surroundings): SheetPart {
	const unit = el("span", { class: "unit" });
	const money = entryField("money", moneyEntry.label, amountField("decimal"), " ", unit);
	const packs = el("div", { class: "order-packs" });
	const half = el("button", { type: "button" }, say`Half of each`);
	const all = el("button", { type: "button" }, say`All of each`);
	const form = el(
		"form",
		{ class: "store-entry", "aria-label": say`Less than the whole order`, novalidate: true },
		money.element,
		el(
			"p",
			{ class: "limits-head" },
			say`The depot sends at most, in packs; blank where it sends all:`,
		),
		packs,
		el("p", { class: "limits-fill" }, half, " ", all),
	);
	const part = el(
		"details",
		{ class: "store-entry-part" },
		el("summary", {}, say`Less money, or the depot sends less`),
		el(
			"p",
			{},
			say`Say what there is for this order: then stands here what to take first, and what runs out.`,
		),
		form,
	);
	let fields: readonly Sent[] = [];
	const write = (written: Workbook | string, field?: EntryField): void => {
		field?.wrong(typeof written === "string" ? written : undefined);
		if (typeof written !== "string" && written !== store.state.workbook) store.edit(written);
	};
	const send = (packsOf: (ordered: number) => string) =>
		write(
			withDepotPacks(
				store.state.workbook,
				fields.map(({ item, ordered }) => ({ item, packs: packsOf(ordered) })),
			),
		);
	onEntered(money, () => {
		const { workbook } = store.state;
		const text = money.control.value;
		if (text.trim() !== moneyEntry.read(workbook)) write(moneyEntry.write(workbook, text), money);
		else money.wrong(undefined);
	});
	half.addEventListener("click", () => send((ordered) => String(Math.floor(ordered / 2))));
	all.addEventListener("click", () => send(() => ""));
	form.addEventListener("submit", (event) => event.preventDefault());
	const fieldOf = ({ item, ordered }: Wanted, at: number): Sent => {
		const of = el("span", { class: "unit" }, " ", say`of ${counted(ordered, "pack")}`);
		const field = entryField(`sent-${at}`, item, amountField("numeric"), of);
		onEntered(field, () =>
			write(withDepotPacks(store.state.workbook, [{ item, packs: field.control.value }]), field),
		);
		return { item, ordered, field };
	};
	return {
		element: part,
		paint(state) {
			unit.textContent = unitSetting(state, "currency") ?? "";
			const wanted = wantedOf(state);
			if (!isSame(fields, wanted)) {
				fields = wanted.map(fieldOf);
				fill(packs, ...fields.map(({ field }) => field.element));
			}
			show(money, moneyEntry.read(state.workbook));
			for (const { item, field } of fields) show(field, depotPacksOf(state.workbook, item));
			if ([money, ...fields.map(({ field }) => field)].some(({ control }) => control.value !== ""))
				part.open = true;
			part.hidden = fields.length === 0 && money.control.value === "";
		},
	};
}

interface Wanted {
	readonly item: string;
	readonly ordered: number;
}

interface Sent extends Wanted {
	readonly field: EntryField<HTMLInputElement>;
}

function wantedOf(state: State): Wanted[] {
	return orderLines(state).flatMap(({ item, packs }) => (packs ? [{ item, ordered: packs }] : []));
}

function isSame(shown: readonly Sent[], wanted: readonly Wanted[]): boolean {
	return (
		shown.length === wanted.length &&
		shown.every(({ item, ordered }, i) => item === wanted[i]?.item && ordered === wanted[i].ordered)
	);
}

function amountField(inputmode: "decimal" | "numeric"): HTMLInputElement {
	return el("input", { type: "text", inputmode, autocomplete: "off" });
}

/** When a field is left or Enter is pressed in it. */
function onEntered({ control }: EntryField, enter: () => void): void {
	control.addEventListener("change", enter);
}

/** What stands in the workbook; not over what is being typed, nor over what was refused and is to be put right. */
function show({ control }: EntryField<HTMLInputElement>, text: string): void {
	const isBeingTyped =
		document.activeElement === control && ![control.defaultValue, text].includes(control.value);
	if (isBeingTyped || control.hasAttribute("aria-invalid")) return;
	control.defaultValue = text;
	control.value = text;
}
