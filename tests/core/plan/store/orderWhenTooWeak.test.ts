import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { numberIn, rowsOf, valueIn } from "../../planCells.ts";
import { smallUnit } from "../../smallUnit.ts";

test("where every lot is too weak, the order is for what a fresh delivery makes", () => {
	const made = plan(
		smallUnit({
			"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
				liquid,liquid,0.6,pct_w_v,,100,,yes`,
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				liquid,L1,10,2020-01-10,,,`,
		}),
	);
	const row = rowsOf(made, "order.csv").find((each) => valueIn(each.item) === "liquid");
	expect(valueIn(row?.remark)).toContain("too weak");
	expect(numberIn(row, "order_packs")).toBeGreaterThan(0);
});
