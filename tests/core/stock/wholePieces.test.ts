import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { isCounted } from "../../../src/core/stock/wholePieces.ts";
import { expectWithin } from "../../expectWithin.ts";
import { contentOf } from "../contentOf.ts";
import { unitWith } from "../smallUnit.ts";

test.each([
	["piece", true],
	["Pairs", true],
	[" tablet ", true],
	["boîte", true],
	["L", false],
	["g", false],
	["piece of cloth in metres", false],
	["tenth of a piece", false],
])("%s is counted: %s", (measure, counted) => {
	expect(isCounted(measure)).toBe(counted);
});

/** Four tenths of a piece a round: the rounds of a week come to parts of pieces. */
const asideOf = (measure: string) => {
	const found = plan(
		unitWith(
			{},
			{
				"usage.csv": "item,basis,quantity,note\ncloth,round,0.4,",
				"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
					cloth,other,${measure},1,,7,0,0.95
					liquid,other,L,5,3,7,10,0.95`,
			},
		),
	);
	return contentOf(found, "supply-use.csv", "item", "set_aside").find(
		([item]) => item === "cloth",
	)?.[1];
};

test("pieces are set aside whole, litres are not", () => {
	expect(asideOf("piece")).toBe(3);
	expectWithin(asideOf("L") as number, 2.8, 1e-9, "L");
});
