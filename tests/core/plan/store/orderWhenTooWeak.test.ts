import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
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

test("where a lot is strong enough, the order is for what takes its place at the strength it has now", () => {
	const of = (madeOn: string) => {
		const made = plan(
			smallUnit({
				"chlorine.csv":
					"product,form,strength,strength_measure,fade_factor,in_use\nliquid,liquid,3.5,pct_w_v,1,yes",
				"lots.csv": `item,lot,quantity,made_on\nliquid,L1,10,${madeOn}`,
			}),
		);
		const row = rowsOf(made, "order.csv").find((each) => valueIn(each.item) === "liquid");
		return {
			strength: numberIn(rowsOf(made, "strength.csv")[0], "strength_today") as number,
			use: numberIn(row, "use_expected") as number,
		};
	};
	const [fresh, old] = [of("2027-01-10"), of("2025-01-10")];
	expect(old.strength).toBeLessThan(0.75 * fresh.strength);
	// Measured out in steps of 10 mL, and fading by a few in 100 until the delivery.
	expectWithin((old.use * old.strength) / (fresh.use * fresh.strength), 1, 0.03, "times as much");
});
