import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
import { smallUnit } from "../../smallUnit.ts";

const HEADER =
	"item,group,measure,pack_size,pack_price,lead_days,lead_days_spread,wastage_pct,service_level";
const order = (lead: number, spread: string) =>
	contentOf(
		plan(
			smallUnit({
				"items.csv": `${HEADER}\ngauze squares,gauze,piece,100,4,${lead},${spread},5,0.95`,
			}),
		),
		"order.csv",
		"use_expected",
		"target_stock",
		"order_packs",
	);

test("a delivery that can be late is planned for as if it took as long", () => {
	expect(order(7, "5")).toEqual(order(12, "0"));
	expect(order(7, "5")).not.toEqual(order(7, "0"));
});

test("left blank nothing is added", () => {
	expect(order(7, "")).toEqual(order(7, "0"));
});
