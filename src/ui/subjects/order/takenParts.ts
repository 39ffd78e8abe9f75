import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { itemsSheet } from "../../../core/sheets/items.ts";
import { takeFirstSheet } from "../../../core/sheets/takeFirst.ts";
import { type Child, el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type TakenLine, type TakenOrder, takenOrder } from "./takenOrder.ts";
import { moneyWords } from "./takenWords.ts";

/** Steps that are listed; the sheet has all of them. */
const MOST_STEPS = 20;

/** What to take first and what then runs out; nothing where all of the order can be had and no money is counted. */
export function takenParts(state: State): Child[] {
	const order = takenOrder(state);
	if (!order || (order.money === undefined && !order.isLess)) return [];
	const currency = unitSetting(state, "currency") ?? "";
	const words = moneyWords(order, currency);
	if (!order.isLess) return [el("p", {}, words)];
	return [
		el("h2", { class: "taken-title" }, takeFirstSheet.title),
		el("p", {}, rule),
		inRoom(stepsTable(state, currency), takeFirstSheet.title),
		el("h2", { class: "taken-title" }, RUNS_OUT),
		words !== "" && el("p", {}, words),
		inRoom(outTable(order), RUNS_OUT),
	];
}

const RUNS_OUT = say`What then runs out`;

const rule = say`Pack after pack, the one without which an item runs out first: what no safe round can do without before all else. What a round can do without is said under “${itemsSheet.title}”.`;

/** A table that is wider than a phone is moved in its own room. */
function inRoom(table: HTMLElement, name: string): HTMLElement {
	return el("div", { class: "combined", tabindex: 0, role: "region", "aria-label": name }, table);
}

function stepsTable(state: State, currency: string): HTMLElement {
	const all = rowsOf(state.plan, takeFirstSheet);
	const money = (sum: number | undefined) => (sum === undefined ? "–" : shownNumber(sum, 2));
	const rows = all.slice(0, MOST_STEPS).map((row): Child[] => {
		const isPaid = wordIn(row.taken) === "yes";
		const packs = counted(numberIn(row.packs) ?? 0, "pack");
		return [
			say`${shownPlain(numberIn(row.place) ?? 0)}. ${wordIn(row.item)}`,
			isPaid ? el("strong", {}, packs) : packs,
			money(numberIn(row.cost)),
			isPaid ? money(numberIn(row.spent)) : say`not paid for`,
			lasting(wordIn(row.out_without)),
		];
	});
	const left = all.length - rows.length;
	if (left > 0) rows.push([say`and ${left} more lines on the sheet “${takeFirstSheet.title}”`]);
	return paperTable(
		takeFirstSheet.title,
		[
			{ label: say`Take` },
			{ label: say`Packs`, numeric: true },
			{ label: say`Cost`, unit: currency, numeric: true },
			{ label: say`Spent so far`, unit: currency, numeric: true },
			{ label: say`Runs out without it on` },
		],
		[{ rows }],
	);
}

function outTable({ lines }: TakenOrder): HTMLElement {
	return paperTable(
		RUNS_OUT,
		[
			{ label: say`Item` },
			{ label: say`Take`, unit: say`packs`, numeric: true },
			{ label: say`Runs out on` },
			{ label: say`With the whole order on` },
			{ label: say`Then stops` },
		],
		[{ rows: lines.map(outRow) }],
	);
}

function outRow(line: TakenLine): Child[] {
	const { item, taken, ordered, outWithTaken, outWithAll, stops, waitsFor } = line;
	return [
		el("span", {}, item, waitsFor !== "" && el("span", { class: "paper-remark" }, waitsFor)),
		taken === undefined
			? "–"
			: el("strong", {}, say`${shownPlain(taken)} of ${shownPlain(ordered)}`),
		taken === undefined ? "–" : lasting(outWithTaken),
		lasting(outWithAll),
		shownWord(stops),
	];
}

/** A day, or that it lasts for every day that is looked at. */
function lasting(day: string): string {
	return day === "" ? say`lasts` : shownDay(day);
}
