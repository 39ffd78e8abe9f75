import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { NOT_USABLE } from "../../../core/plan/chlorine/lotFigures.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { countedTooLongAgo } from "../../../core/plan/store/countAge.ts";
import { isComing, lotsOnHand } from "../../../core/plan/store/lotsOnHand.ts";
import { ordersOnTheWay } from "../../../core/plan/store/ordersOnTheWay.ts";
import { readToday } from "../../../core/plan/today/readToday.ts";
import { say } from "../../../core/say.ts";
import { orderSheet } from "../../../core/sheets/order.ts";
import { stockSheet } from "../../../core/sheets/stock.ts";
import { addDays } from "../../../core/values/date.ts";
import { amountOf } from "../../format/amountOf.ts";
import { counted } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay } from "../../format/shownDay.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { missingPieces } from "../kits/missingPieces.ts";
import { piecesToReplace } from "../kits/piecesToReplace.ts";
import { type OrderLine, orderLines, type Urgency } from "../order/orderLines.ts";
import { takenOrder } from "../order/takenOrder.ts";
import type { ToDo, ToDoList } from "./toDo.ts";

/** Lots that end within so many days are named (common practice, no source). */
const SOON_DAYS = 30;

/** What the storekeeper has to know, the most pressing first; lists without lines stay, so that nothing is looked for in vain. */
export function storekeeperLists(state: State): ToDoList[] {
	const lines = orderLines(state);
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const packSizes = new Map(lines.map((line) => [line.item, line]));
	const of = (urgency: Urgency) => lines.filter((line) => line.urgency === urgency);
	const can = lessToTake(state);
	const toOrder = (line: OrderLine, by: string) => orderToDo(line, by, can.get(line.item));
	return [
		{
			urgent: true,
			word: say`URGENT`,
			title: say`Runs out before an order can arrive: find some elsewhere today`,
			lines: of("emergency").map((line) =>
				toOrder(
					line,
					line.runsOutOn > firstDay ? say`before ${shownDay(line.runsOutOn)}` : say`today`,
				),
			),
		},
		{
			word: say`LATE`,
			title: say`Should have been ordered already`,
			lines: of("late").map((line) => toOrder(line, say`today`)),
		},
		{
			word: say`ORDER`,
			title: say`Order now`,
			lines: of("now").map((line) =>
				toOrder(line, line.orderBy === "" ? say`today` : say`by ${shownDay(line.orderBy)}`),
			),
		},
		{
			word: say`PIECES`,
			title: say`Pieces missing from kits, or at their limit of rounds: find or order them`,
			lines: [...missingPieces(state), ...piecesToReplace(state)],
		},
		{
			word: say`USE FIRST`,
			title: say`Goes out of date soon, or will not be used in time`,
			lines: ending(state, packSizes),
		},
		{ word: say`ON THE WAY`, title: say`On the way`, lines: arriving(state, packSizes) },
		{ word: say`COUNT`, title: say`Last counted too long ago`, lines: toCount(state) },
	];
}

/** Packs that can be had of items of which it is less than is ordered. */
function lessToTake(state: State): ReadonlyMap<string, number> {
	const lines = takenOrder(state)?.lines ?? [];
	return new Map(
		lines.flatMap(({ item, taken, ordered }) =>
			taken === undefined || taken === ordered ? [] : [[item, taken] as const],
		),
	);
}

/** @param taken packs that can be had, where they are fewer */
function orderToDo(line: OrderLine, by: string, taken: number | undefined): ToDo {
	const { item, packs, packSize, measure, onOrder, remark } = line;
	const amount =
		packs === undefined
			? say`packs not known`
			: packs === 0
				? say`no packs to order`
				: say`${counted(packs, "pack")}, ${amountOf(packSize ?? 1, measure)} each`;
	const way = (onOrder ?? 0) > 0 ? say`On the way: ${amountOf(onOrder ?? 0, measure)}.` : "";
	const less =
		taken === undefined
			? ""
			: say`With the money and packs there are: ${counted(taken, "pack")}; see “${orderSheet.title}”.`;
	return { item, amount, by, more: [less, remark, way].filter(Boolean).join(" ") };
}

type Lines = ReadonlyMap<string, OrderLine>;

/** A quantity as packs, because packs are what stands on the shelf. */
function inPacks(lines: Lines, item: string, quantity: number): string {
	const line = lines.get(item);
	if (!line?.packSize) return amountOf(quantity, line?.measure ?? "");
	const packs = quantity / line.packSize;
	const words = Number.isInteger(packs)
		? counted(packs, "pack")
		: say`about ${counted(Number(packs.toFixed(1)) || 0.1, "pack")}`;
	return `${words} (${amountOf(quantity, line.measure)})`;
}

function ending(state: State, packs: Lines): ToDo[] {
	const firstDay = unitSetting(state, "plan_start") ?? "";
	if (firstDay === "") return [];
	const soon = addDays(firstDay, SOON_DAYS);
	return rowsOf(state.plan, stockSheet)
		.map((row) => ({
			item: wordIn(row.item),
			lot: wordIn(row.lot),
			onHand: numberIn(row.on_hand),
			until: wordIn(row.usable_until),
			wasted: numberIn(row.wasted) ?? 0,
		}))
		.filter(
			({ onHand, until, wasted }) =>
				onHand !== 0 && until !== "" && (until <= soon || until === NOT_USABLE || wasted > 0),
		)
		.sort((a, b) => (keyOf(a.until) < keyOf(b.until) ? -1 : 1))
		.map(({ item, lot, onHand, until, wasted }) => {
			const isPast = until === NOT_USABLE || until < firstDay;
			return {
				item: say`${item}, lot ${lot}`,
				amount: onHand === undefined ? "" : inPacks(packs, item, onHand),
				by: isPast ? say`do not use` : say`use by ${shownDay(until)}`,
				more: isPast ? PAST_USE : wasted > 0 ? spare(inPacks(packs, item, wasted)) : "",
			};
		});
}

const PAST_USE = say`Out of date or too weak: set it aside and have it disposed of safely.`;

function spare(amount: string): string {
	return say`Of it, ${amount} will not be used in time: lend or exchange it.`;
}

/** What is past use comes before every date. */
function keyOf(until: string): string {
	return until === NOT_USABLE ? "" : until;
}

function arriving(state: State, packs: Lines): ToDo[] {
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const books = storeBooks(state.workbook);
	const lots = lotsOnHand(readToday(state.workbook, state.today))
		.filter(isComing)
		.map(({ row: { value }, quantity }) => ({
			item: say`${value.item}, lot ${value.lot}`,
			amount: inPacks(packs, value.item, quantity),
			on: value.arrives_on ?? "",
		}));
	const orders = ordersOnTheWay(books).map(({ row: { value }, expectedOn }) => ({
		item: value.item,
		amount: say`${counted(value.packs, "pack")}, ordered ${shownDay(value.ordered_on)}`,
		on: expectedOn,
	}));
	return [...lots, ...orders]
		.sort((a, b) => (a.on < b.on ? -1 : 1))
		.map(({ item, amount, on }) => ({
			item,
			amount,
			by: on < firstDay ? say`was due ${shownDay(on)}` : shownDay(on),
			more:
				on < firstDay
					? say`Overdue, and in no day's stock. Has it come? Enter it as received. If not, ask where it is.`
					: "",
		}));
}

/** On one line: many items are counted in one go. */
function toCount(state: State): ToDo[] {
	const firstDay = unitSetting(state, "plan_start");
	if (firstDay === undefined) return [];
	const items = countedTooLongAgo(readToday(state.workbook, state.today), firstDay).map(
		({ item, day }) => say`${item} (${shownDay(day)})`,
	);
	if (items.length === 0) return [];
	return [{ item: counted(items.length, "item"), amount: "", by: "", more: items.join(semicolon) }];
}

/** What is most pressing, in one line. */
export function storekeeperHeadline(state: State): string {
	const lines = orderLines(state);
	const count = (urgency: Urgency) => lines.filter((line) => line.urgency === urgency).length;
	const urgent = count("emergency");
	const late = count("late");
	const now = count("now");
	const pressing = [
		urgent > 0 && say`${counted(urgent, "item")} urgent`,
		late > 0 && say`${counted(late, "order")} late`,
	].filter(Boolean);
	const rest = now > 0 ? say`${counted(now, "item")} to order now` : say`nothing else to order`;
	return say`${pressing.length > 0 ? pressing.join(", ") : say`Nothing is urgent`}; ${rest}`;
}
