import { daysOfBooks } from "../../../core/plan/record/daysOfBooks.ts";
import {
	type ItemOverDays,
	itemsOverDays,
	usedOf,
} from "../../../core/plan/record/itemsOverDays.ts";
import { type RoundsOverDays, roundsOverDays } from "../../../core/plan/record/roundsOverDays.ts";
import { type UsageLearned, usageLearned } from "../../../core/plan/record/usageLearned.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { type Child, el } from "../../dom/el.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { listed } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { DASH } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";

/** Takes a figure over; absent on paper. */
export type TakeOver = (learned: UsageLearned) => void;

/** The books of each item over some days, and what goes each time by them beside what the plan takes; none where the journal has a line of no item. */
export function itemsTable(
	read: ReadWorkbook,
	days: readonly IsoDate[],
	takeOver?: TakeOver,
): HTMLTableElement | undefined {
	const kept = itemsOverDays(read, days).filter(({ isKept }) => isKept);
	if (kept.length === 0) return undefined;
	const told = toldOf(read, days, takeOver);
	return paperTable(
		say`What came and went of each item`,
		[
			{ label: say`Item` },
			{ label: say`At the beginning`, numeric: true },
			{ label: say`Received`, numeric: true },
			{ label: say`Issued`, numeric: true },
			{ label: say`Lost`, numeric: true },
			{ label: say`Found by counting`, numeric: true },
			{ label: say`At the end`, numeric: true },
			{ label: say`Days without`, numeric: true },
			{ label: say`Used each time`, ...(told.since && { unit: told.since }) },
		],
		[{ rows: kept.map((item) => cells(item, told.eachTime(item.item))) }],
	);
}

/** What goes each time by the books, over those of the days on which both they and the rounds were kept; and which days these are, where they are fewer. */
function toldOf(read: ReadWorkbook, all: readonly IsoDate[], takeOver: TakeOver | undefined) {
	const days = daysOfBooks(read, all);
	const rounds = roundsOverDays(read, days);
	const books = new Map(itemsOverDays(read, days).map((item) => [item.item, item]));
	const [first, last] = [days[0], days.at(-1)];
	return {
		since:
			first !== undefined && last !== undefined && days.length < all.length
				? say`${shownDay(first)} to ${shownDay(last)}`
				: undefined,
		eachTime(name: string): Child {
			const item = books.get(name) as ItemOverDays;
			const learned = usageLearned(read, item, rounds, days.length);
			return learned ? learnedPart(learned, takeOver) : perKit(item, rounds);
		},
	};
}

/** The items of which the journal has no line: what went of them is not known, and not 0. */
export function itemsNotRecorded(read: ReadWorkbook, days: readonly IsoDate[]): string {
	const names = itemsOverDays(read, days).flatMap(({ item, isKept }) => (isKept ? [] : [item]));
	if (names.length === 0) return "";
	return say`Nothing is written down in the journal of: ${listed(names)}.`;
}

function cells(item: ItemOverDays, eachTime: Child): Child[] {
	return [
		say`${item.item} (${shownWord(item.measure)})`,
		plain(item.opening),
		plain(item.received),
		plain(item.issued),
		plain(item.lost),
		signed(item.difference),
		plain(item.closing),
		plain(item.daysWithoutStock),
		eachTime,
	];
}

/** Where no line of what is used up can be compared, what went for each kit still says something. */
function perKit(item: ItemOverDays, { kits }: RoundsOverDays): string {
	const used = usedOf(item);
	if (kits === 0 || used <= 0) return DASH;
	return say`${threeDigits(used / kits)} for each kit reprocessed (${plain(used)} for ${plain(kits)})`;
}

function threeDigits(value: number): string {
	return shownPlain(Number(value.toPrecision(3)));
}

const DECIMALS = 3;

/** Sums of typed quantities carry the rounding of adding. */
function plain(quantity: number): string {
	return shownPlain(Number(quantity.toFixed(DECIMALS)));
}

function signed(difference: number): string {
	const size = plain(Math.abs(difference));
	return size === "0" ? "0" : `${difference < 0 ? "−" : "+"}${size}`;
}

function learnedPart(learned: UsageLearned, takeOver: TakeOver | undefined): HTMLElement {
	const { row, each, used, times, evidence } = learned;
	const basis = shownWord(row.value.basis);
	return el(
		"span",
		{},
		say`${threeDigits(each)} for each ${basis} by the books (${plain(used)} for ${plain(times)}); ${plain(row.value.quantity)} in the plan.`,
		" ",
		evidence === "done_too_seldom" && say`Too seldom done to take it over.`,
		evidence === "issued_too_seldom" && say`One issue is too large a part of it to take it over.`,
		evidence === "enough" &&
			takeOver &&
			el(
				"button",
				{
					type: "button",
					"aria-label": say`${row.value.item}: take this figure over`,
					onclick: () => takeOver(learned),
				},
				say`Take this figure over`,
			),
	);
}
