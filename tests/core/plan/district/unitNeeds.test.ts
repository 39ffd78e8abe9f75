import { expect, test } from "vitest";
import { unitNeeds } from "../../../../src/core/plan/district/unitNeeds.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { rowsOf, valueIn } from "../../planCells.ts";
import { smallUnit } from "../../smallUnit.ts";

const WHOSE = { unit: "Hill", path: "units/hill" };
const made = plan(
	smallUnit({
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			gauze squares,G1,40,,2027-02-10,,
			gauze squares,G2,10,,,2027-03-03,
			clean gloves,H1,2000,,2027-02-01,,`,
	}),
);
const needs = unitNeeds(WHOSE, made, (item) => item.toUpperCase());

test("each item of the order, by the district's name, with what the unit says of it", () => {
	const orders = rowsOf(made, "order.csv");
	expect(needs.length).toBe(orders.length);
	needs.forEach((need, i) => {
		const order = orders[i] ?? {};
		const item = String(valueIn(order.item));
		expect(
			["unit", "path", "item", "item_as_written"].map((key) => valueIn(need[key as "unit"])),
		).toEqual(["Hill", "units/hill", item.toUpperCase(), item]);
		const { unit, path, item: _, item_as_written, need: __, ...same } = need;
		for (const [key, cell] of Object.entries(same))
			expect([key, valueIn(cell)]).toEqual([key, valueIn(order[key])]);
	});
});

test("what is lacking: the target less what is there and on its way, never below nothing", () => {
	const lacking = (item: string) => needs.find((need) => valueIn(need.item_as_written) === item);
	const gauze = lacking("gauze squares");
	expect([valueIn(gauze?.usable), valueIn(gauze?.on_order)]).toEqual([40, 10]);
	expectWithin(
		valueIn(gauze?.need) as number,
		(valueIn(gauze?.target_stock) as number) - 50,
		1e-9,
		"pieces",
	);
	expect(valueIn(lacking("clean gloves")?.need)).toBe(0);
});

test("without names of the district an item keeps its own", () => {
	expect(unitNeeds(WHOSE, made).map((need) => valueIn(need.item))).toEqual(
		needs.map((need) => valueIn(need.item_as_written)),
	);
});
