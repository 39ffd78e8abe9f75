import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { priceEach } from "../../../../src/core/plan/safety/priceEach.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import type { Measure } from "../../../../src/core/sheets/planMeasures.ts";
import { unitWith } from "../../smallUnit.ts";

const HEADER = "item,group,measure,pack_size,pack_price";
const ITEMS = [
	"swabs,gauze,piece,100,4",
	"gloves,gloves,pair,50,6",
	"vinegar,other,mL,500,1",
	"brush,other,piece,1,3",
	"liquid,other,L,5,3",
];
const USAGE = ["vinegar,descale,1,", "brush,descale,1,", "swabs,kit,1,"];
const USED = ["liquid,liquid,3.5,pct_w_v,,0,,yes"];

interface Store {
	readonly items?: readonly string[];
	readonly usage?: readonly string[];
	readonly products?: readonly string[];
}

/** The price of one of a measure's things; undefined where no one item is what it is. */
function price(measure: Measure, of: Store = {}): number | undefined {
	const { items = ITEMS, usage = USAGE, products = USED } = of;
	const planned = plannedUnit(
		readWorkbook(
			unitWith(
				{ plan_days: 1 },
				{
					"items.csv": [`${HEADER},lead_days,wastage_pct,service_level`, ...items].join("\n"),
					"usage.csv": ["item,basis,quantity,note", ...usage].join("\n"),
					"chlorine.csv": [
						"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use",
						...products,
					].join("\n"),
				},
			),
		),
	);
	if (!planned.ok) throw new Error("no days");
	const each = priceEach(planned.value.unit, measure, "mL");
	return each && valueIn(each);
}
const without = (item: string) => ITEMS.filter((line) => !line.startsWith(item));

test.each<[string, Measure, Store, number | undefined]>([
	["the product in use, measured in mL: 5 L for 3", "chlorine", {}, 3 / 5000],
	["no product in use", "chlorine", { products: [] }, undefined],
	["a product that the store does not list", "chlorine", { items: without("liquid") }, undefined],
	[
		"the product counted by the piece",
		"chlorine",
		{ items: [...without("liquid"), "liquid,other,can,1,3"] },
		undefined,
	],
	["the liquid that goes by descalings, by the litre", "vinegar_litres", {}, 2],
	["two liquids", "vinegar_litres", { usage: [...USAGE, "liquid,descale,1,"] }, undefined],
	["none", "vinegar_litres", { usage: ["vinegar,day,1,"] }, undefined],
	[
		"one without a price",
		"vinegar_litres",
		{ items: [...without("vinegar"), "vinegar,other,L,1,"] },
		undefined,
	],
	["the one kind of gauze", "gauze_pieces", {}, 0.04],
	["two kinds of gauze", "gauze_pieces", { items: [...ITEMS, "rolls,gauze,m,10,1"] }, undefined],
	["what is no single item", "kits_used", {}, undefined],
])("%s", (_, measure, store, one) => {
	const found = price(measure, store);
	expect(found && Number(found.toPrecision(12))).toBe(one);
});
