import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { inOrder } from "../values/inOrder.ts";
import { MOST_STEPS, type RunsOut } from "./runsOutWith.ts";
import { isNeeded, type Stopped } from "./stopsWithout.ts";

/** An item of the order, as money is shared out. */
export interface WantedItem {
	readonly item: string;
	readonly stops: Stopped;
	/** Of a pack; null where it is not known and no money is counted. */
	readonly price: number | null;
	/** Packs that can be had. */
	readonly packs: number;
	readonly runsOut: RunsOut;
}

/** Packs of one item in the order in which to take them. */
export interface TakeStep {
	readonly item: string;
	readonly packs: number;
	/** null where no price is known. */
	readonly cost: number | null;
	/** Day on which it runs out without these packs and those after them; null where it lasts. */
	readonly day: number | null;
	/** Whether the money pays for them. */
	readonly paid: boolean;
	/** Cost of all that is paid for up to here; null where a price of that is not known. */
	readonly spent: number | null;
}

interface Inputs {
	readonly items: readonly WantedItem[];
	/** null where the whole order can be paid for. */
	readonly money: number | null;
}

/** Sums of prices that come out equal are not kept apart for their last bit. */
const ROUNDING_ERROR = 1e-12;

const soap: WantedItem = {
	item: "soap",
	stops: "safe_rounds",
	price: 2,
	packs: 2,
	runsOut: { each: 1, days: [5, 15, 25] },
};

/** What to take first, pack after pack, and what of it the money pays for. */
export const takeFirst = calculation<Inputs, TakeStep[]>({
	key: "take_first",
	label: say`What to take first`,
	unit: say`packs`,
	formula: say`Pack after pack, the one next without which an item runs out first: of the items that no safe round can do without, and only when all of those are paid for, of the others. A pack that the money left does not pay for is left out, and money goes on to the next. Of items that run out on one day, by their names; of more than ${MOST_STEPS} packs of an item, several at a time.`,
	source: commonPractice,
	inputs: {
		items: { label: say`Items to order`, unit: say`packs` },
		money: { label: say`Money for this order`, unit: say`currency`, min: 0 },
	},
	example: {
		// Soap would run out on day 5, gloves on day 9, soap with one pack on day 15: 2 + 4 are paid, 2 more are not.
		inputs: {
			items: [
				soap,
				{ ...soap, item: "gloves", price: 4, packs: 1, runsOut: { each: 1, days: [9, 40] } },
			],
			money: 7,
		},
		result: [
			{ item: "soap", packs: 1, cost: 2, day: 5, paid: true, spent: 2 },
			{ item: "gloves", packs: 1, cost: 4, day: 9, paid: true, spent: 6 },
			{ item: "soap", packs: 1, cost: 2, day: 15, paid: false, spent: 6 },
		],
		within: 1e-9,
	},
	compute: ({ items, money }) => paidFor(packsInOrder(items), money ?? Number.POSITIVE_INFINITY),
});

interface NextPacks {
	readonly item: WantedItem;
	readonly packs: number;
	readonly day: number | null;
}

/** Every pack that can be had, the most pressing first. */
function packsInOrder(items: readonly WantedItem[]): NextPacks[] {
	const next = items.flatMap((item) => {
		const { each, days } = item.runsOut;
		return Array.from({ length: Math.ceil(item.packs / each) }, (_, step) => ({
			item,
			packs: Math.min(each, item.packs - step * each),
			day: days[step] as number | null,
		}));
	});
	const lasts = ({ day }: NextPacks) => day ?? Number.POSITIVE_INFINITY;
	const poorer = ({ item }: NextPacks) => Number(!isNeeded(item.stops));
	return next.sort(
		(a, b) =>
			inOrder(poorer(a), poorer(b)) ||
			inOrder(lasts(a), lasts(b)) ||
			inOrder(a.item.item, b.item.item),
	);
}

function paidFor(packs: readonly NextPacks[], money: number): TakeStep[] {
	const steps: TakeStep[] = [];
	let left = money;
	let isShort = false;
	for (const next of packs) {
		const { item } = next;
		const mayPay = isNeeded(item.stops) || !isShort;
		const paid = mayPay ? Math.min(next.packs, payable(item.price, left, money)) : 0;
		left -= paid * (item.price ?? 0);
		if (isNeeded(item.stops) && paid < next.packs) isShort = true;
		add(steps, next, paid, true);
		add(steps, next, next.packs - paid, false);
	}
	return steps;
}

/** Packs that the money left pays for. */
function payable(price: number | null, left: number, money: number): number {
	if (price === null || price === 0) return Number.POSITIVE_INFINITY;
	return Math.floor((left + money * ROUNDING_ERROR) / price);
}

/** One step more, or more packs in the last one. */
function add(steps: TakeStep[], { item, day }: NextPacks, more: number, paid: boolean): void {
	if (more <= 0) return;
	const last = steps.at(-1);
	const joins = last?.item === item.item && last.paid === paid;
	if (joins) steps.pop();
	const packs = joins ? last.packs + more : more;
	const cost = item.price === null ? null : packs * item.price;
	const before = steps.length === 0 ? 0 : (steps.at(-1) as TakeStep).spent;
	const spent = !paid ? before : before === null || cost === null ? null : before + cost;
	steps.push({ item: item.item, packs, cost, day: joins ? last.day : day, paid, spent });
}
