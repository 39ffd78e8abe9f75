import { expect, test } from "vitest";
import { readTable } from "../../../../src/core/read/readTable.ts";
import { districtStockSheet } from "../../../../src/core/sheets/districtStock.ts";
import { orderSheet } from "../../../../src/core/sheets/order.ts";
import { DistrictOrder } from "../../../../src/core/units/districtOrder.ts";
import { storeStock } from "../../../../src/core/units/storeStock.ts";
import { districtLines, orderHeadline } from "../../../../src/ui/subjects/units/districtLines.ts";
import { tableOf } from "../../../core/smallUnit.ts";

const HEADER =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,pack_size,emergency";

test.each([
	["needs more than anyone has", 0, 0, "find some elsewhere today.", "1 pack of 1 item, 1 urgent"],
	[
		"has enough on the way",
		100,
		0,
		"comes to enough, so nothing is ordered.",
		"0 packs of 0 items",
	],
	[
		"can be helped by the district's store",
		0,
		100,
		"has enough, bring it today.",
		"0 packs of 0 items",
	],
	[
		"needs more than the district's store has",
		0,
		60,
		"find some elsewhere today.",
		"1 pack of 1 item, 1 urgent",
	],
])(
	"of gauze that runs out before an order can arrive, a unit that %s is told what to do; no order of nothing is urgent",
	(_which, onOrder, inStore, what, headline) => {
		const order = new DistrictOrder();
		const text = [HEADER, `gauze,piece,0,${onOrder},80,100,1,100,yes`].join("\n");
		order.add(readTable(orderSheet, tableOf(text)).rows.map(({ value }) => value));
		const stock = tableOf(`item,quantity,measure\ngauze,${inStore},piece`);
		const store = storeStock(readTable(districtStockSheet, stock), (item) => item);
		const lines = districtLines(order.table(store).table, () => 0);
		const [line] = lines;
		expect(orderHeadline(1, lines)).toBe(`1 unit together: ${headline}`);
		expect(line?.isUrgent).toBe(true);
		expect(line?.remark.endsWith(what), line?.remark).toBe(true);
	},
);
