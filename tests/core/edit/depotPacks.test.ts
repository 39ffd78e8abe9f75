import { expect, test } from "vitest";
import {
	depotPacksOf,
	moneyEntry,
	withDepotPacks,
	withoutOrderLimits,
} from "../../../src/core/edit/store/withDepotPacks.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { unitWith } from "../smallUnit.ts";

const ITEMS = `item,group,measure,depot_packs
	gauze squares,gauze,piece,
	vinegar,other,L, 3
	liquid,other,L,2`;
const unit = (settings = {}) => unitWith(settings, { "items.csv": ITEMS });
const sentOf = (workbook: Workbook | string) =>
	typeof workbook === "string"
		? workbook
		: ["gauze squares", "vinegar", "liquid"].map((item) => depotPacksOf(workbook, item));

test("what the depot sends is read item by item", () => {
	expect(sentOf(unit())).toEqual(["", "3", "2"]);
	expect(depotPacksOf(unit(), "ribbon")).toBe("");
});

test("it is written beside its items, and the others stay", () => {
	const sent = [
		{ item: "gauze squares", packs: " 4 " },
		{ item: "vinegar", packs: "3" },
		{ item: "ribbon", packs: "9" },
	];
	expect(sentOf(withDepotPacks(unit(), sent))).toEqual(["4", "3", "2"]);
	const same = unit();
	expect(withDepotPacks(same, [{ item: "vinegar", packs: " 3 " }])).toBe(same);
	expect(withDepotPacks(same, [{ item: "liquid", packs: "" }])).not.toBe(same);
});

test("what cannot be sent is refused in words", () => {
	const sent = [
		{ item: "vinegar", packs: "5" },
		{ item: "liquid", packs: "many" },
	];
	expect(withDepotPacks(unit(), sent)).toContain("“many” was found");
});

test("when the order has gone out, its limits go", () => {
	const after = withoutOrderLimits(unit({ order_money: 50 }));
	expect([sentOf(after), moneyEntry.read(after)]).toEqual([["", "", ""], ""]);
	expect(withoutOrderLimits(after)).toBe(after);
	const onlyMoney = withoutOrderLimits(unitWith({ order_money: 50 }));
	expect(moneyEntry.read(onlyMoney)).toBe("");
});
