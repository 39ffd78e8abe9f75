import { expect, test } from "vitest";
import { contentOf } from "../../contentOf.ts";
import { orderOf, planOfStore, type Store } from "../oneItem.ts";

/** Bars of soap that are usable at the end of each of three weeks; two go each day. */
function usable(store: Store): unknown[] {
	const made = planOfStore({ settings: { stock_horizon_days: 21 }, ...store });
	return contentOf(made, "stock-ahead.csv", "item", "usable").flatMap(([item, bars]) =>
		item === "soap" ? [bars] : [],
	);
}

test.each<[string, Store, number[]]>([
	[
		"in the store without a date, which nobody knows",
		{ lots: ["S 60 - - - -"], keepsDays: 10 },
		[46, 32, 18],
	],
	[
		"on its way, which then keeps ten days",
		{ lots: ["S 60 - - 2027-03-02 -"], keepsDays: 10 },
		[48, 0, 0],
	],
	[
		"on its way, with a date of its own",
		{ lots: ["S 60 - - 2027-03-02 2027-05-01"], keepsDays: 10 },
		[48, 34, 20],
	],
	["on its way, of what keeps", { lots: ["S 60 - - 2027-03-02 -"] }, [48, 34, 20]],
	[
		"received before the day that was announced, whatever a new lot keeps",
		{ lots: ["S 60 - 2027-02-27 2027-03-04 -"], keepsDays: 10 },
		[46, 32, 18],
	],
	[
		"counted before the day that was announced",
		{ lots: ["S 60 - - 2027-03-04 -"], journal: ["2027-02-28,soap,S,count,60,"] },
		[46, 32, 18],
	],
	["on its way, its day has passed", { lots: ["S 60 - - 2027-02-20 -"] }, [0, 0, 0]],
])("a lot %s", (_, store, bars) => {
	expect(usable(store)).toEqual(bars);
});

test.each([
	[1, "of the order of 2027-02-26, 1 pack due on 2027-03-03"],
	[2, "of the order of 2027-02-26, 2 packs due on 2027-03-03"],
])("what goes to waste of an order of %d is named by the order", (packs, words) => {
	const placed = `ordered_on,item,packs,expected_on\n2027-02-26,soap,${packs},2027-03-03`;
	const made = planOfStore({ keepsDays: 3, files: { "placed.csv": placed } });
	expect(orderOf(made, "remark")[0]).toContain(words);
});
