import { orderGivenUp } from "../../../core/edit/store/orderGivenUp.ts";
import { orderReceived } from "../../../core/edit/store/orderReceived.ts";
import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { measureOf, type WrongField } from "../../../core/edit/store/storeEntry.ts";
import { type OrderOnTheWay, ordersOnTheWay } from "../../../core/plan/store/ordersOnTheWay.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el } from "../../dom/el.ts";
import { amountOf } from "../../format/amountOf.ts";
import { counted } from "../../format/counted.ts";
import { EXACT } from "../../format/litreWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import { dayNow } from "../../state/dayNow.ts";
import type { State } from "../../state/store.ts";
import { offer } from "../store/entryField.ts";
import { type ReceiveForm, receiveForm } from "./receiveForm.ts";

/** Where an order is received, in whole or in part, or given up; what is begun in it stays while the sheet is painted. */
export function receivePart({ store }: Surroundings): SheetPart {
	const made = receiveForm();
	const { form, fields, giveUp } = made;
	const said = el("p", { class: "entry-said", role: "status" });
	let saidOf: Workbook | undefined;
	const write = (workbook: Workbook, words: string) => {
		saidOf = workbook;
		store.edit(workbook);
		said.textContent = words;
	};
	const chosen = () => orderAt(store.state, made.read().line);
	fields.order.control.addEventListener("change", () => begin(made, store.state));
	form.addEventListener("input", () => offerRest(made, chosen()));
	giveUp.addEventListener("click", () => {
		const order = chosen();
		if (!order) return;
		const { item, ordered_on: ordered } = order.row.value;
		write(
			orderGivenUp(store.state.workbook, order.row.line),
			say`The order of ${item} of ${shownDay(ordered)} is given up.`,
		);
	});
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const order = chosen();
		const delivery = made.read();
		const result = orderReceived(store.state.workbook, delivery);
		showWrong(made, result.ok ? [] : result.wrong);
		if (!result.ok || !order) return;
		const { item } = order.row.value;
		const measure = measureOf(storeBooks(result.workbook).items, item);
		const amount = amountOf(result.quantity, measure, EXACT);
		write(
			result.workbook,
			say`${item}, lot ${delivery.lot.trim()}: ${amount} received on ${shownDay(delivery.day)}; it stands in the store.`,
		);
	});
	const part = el(
		"details",
		{ class: "store-entry-part", open: true },
		el("summary", {}, say`Receive an order, or give it up`),
		form,
	);
	let shownLine = "";
	return {
		element: el("div", {}, part, said),
		paint(state) {
			if (state.workbook !== saidOf) said.textContent = "";
			const orders = onTheWay(state);
			offer(
				fields.order.control,
				orders.map((order) => [String(order.row.line), orderWords(order, state)]),
			);
			part.hidden = orders.length === 0;
			const { value } = fields.order.control;
			const key = `${value} ${orders.length}`;
			if (key !== shownLine) begin(made, state);
			shownLine = key;
		},
	};
}

function onTheWay(state: State): OrderOnTheWay[] {
	return [...ordersOnTheWay(storeBooks(state.workbook))].sort((a, b) =>
		a.expectedOn < b.expectedOn ? -1 : 1,
	);
}

function orderAt(state: State, line: number): OrderOnTheWay | undefined {
	return onTheWay(state).find(({ row }) => row.line === line);
}

function orderWords({ row, expectedOn }: OrderOnTheWay, state: State): string {
	const { item, packs } = row.value;
	const what = say`${item}, ${counted(packs, "pack")}`;
	return expectedOn < dayNow(state)
		? say`${what}: was due ${shownDay(expectedOn)}`
		: say`${what}: due ${shownDay(expectedOn)}`;
}

/** What is known of an order that is chosen: all its packs, today. */
function begin(made: ReceiveForm, state: State): void {
	const order = orderAt(state, made.read().line);
	const { packs, day, lot, made: madeOn, expires } = made.fields;
	packs.control.value = order ? String(order.row.value.packs) : "";
	if (day.control.value === "") day.control.value = dayNow(state);
	for (const { control } of [lot, madeOn, expires]) control.value = "";
	showWrong(made, []);
	offerRest(made, order);
}

/** Whether the rest is still to come is asked only where there is a rest. */
function offerRest({ fields, rest }: ReceiveForm, order: OrderOnTheWay | undefined): void {
	const came = Number(fields.packs.control.value.replace(",", "."));
	rest.hidden = !(order && came > 0 && came < order.row.value.packs);
}

function showWrong({ fields }: ReceiveForm, wrong: readonly WrongField[]): void {
	const wordsOf = (name: WrongField["field"]) => {
		const found = wrong.find(({ field }) => field === name);
		if (!found) return undefined;
		return "words" in found ? found.words : say`It is on the way until ${shownDay(found.arrives)}.`;
	};
	fields.order.wrong(wordsOf("item"));
	fields.packs.wrong(wordsOf("quantity"));
	fields.day.wrong(wordsOf("day"));
	fields.lot.wrong(wordsOf("lot"));
	fields.made.wrong(wordsOf("made"));
	fields.expires.wrong(wordsOf("expires"));
	Object.values(fields)
		.find(({ control }) => control.hasAttribute("aria-invalid"))
		?.control.focus();
}
