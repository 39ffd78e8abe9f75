import { expect, test } from "vitest";
import { strengthOfLiquid } from "../../../../src/core/chlorine/strengthOfLiquid.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { answerOf } from "../../answerOf.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { numberIn, rowsOf, totalOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const FILE = "mixing-days.csv";
const strong = {
	"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
	liquid,liquid,12,pct_w_v,,1.3,,yes`,
};
const lots = (...lines: string[]) => ({
	"lots.csv": ["item,lot,quantity,made_on,received_on,arrives_on,expires_on", ...lines].join("\n"),
});
const hot = { store_c: 40, measure_step_ml: 1, plan_days: 28 };

test("one preparation a day, the same each day from a lot that does not fade", () => {
	expect(
		contentOf(
			plan(smallUnit()),
			FILE,
			"date",
			"lot",
			"litres",
			"product_quantity",
			"product_measure",
		),
	).toEqual(Array.from({ length: 7 }, (_, i) => [`2027-03-0${i + 1}`, "L1", 5.5, 790, "mL"]));
});

test("as the lot fades, more is measured out for the same strength", () => {
	const made = plan(unitWith(hot, { ...strong, ...lots("liquid,L1,9,2027-02-01,,,") }));
	const rows = rowsOf(made, FILE);
	let last = 0;
	rows.forEach((row, day) => {
		const holds = answerOf(strengthOfLiquid, {
			gramsPerLitre: 120,
			storeC: 40,
			days: 28 + day,
			fadeFactor: 1.3,
		});
		const quantity = numberIn(row, "product_quantity") as number;
		expectWithin(quantity, Math.ceil((1000 * 5.5 * 5) / holds), 0, "mL");
		expect(quantity).toBeGreaterThanOrEqual(last);
		expectWithin(numberIn(row, "water_litres"), 5.5 - quantity / 1000, 1e-12, "L");
		expect(numberIn(row, "strength_made_pct")).toBeGreaterThanOrEqual(0.5);
		last = quantity;
	});
	expect(last).toBeGreaterThan(numberIn(rows[0], "product_quantity") as number);
	const rounds = numberIn(totalOf(made, "rounds"), "expected") as number;
	const used = numberIn(totalOf(made, "chlorine"), "expected") as number;
	const sum = columnOf(made, FILE, "product_quantity").reduce(
		(all: number, q) => all + Number(q),
		0,
	);
	// Every day of the plan expects the same number of rounds.
	expectWithin(used, (rounds / 28) * sum, 1e-6 * used, "mL");
});

test("from the day after a lot's last, and from the day another arrives, the lot changes", () => {
	const made = plan(
		smallUnit(
			lots(
				"liquid,A,1,,,,2027-03-02",
				"liquid,B,1,,,,2027-12-01",
				"liquid,C,1,,,2027-03-05,2027-06-01",
			),
		),
	);
	expect(columnOf(made, FILE, "lot")).toEqual(["A", "A", "B", "B", "C", "C", "C"]);
});

test("without any lot it goes by the label", () => {
	expect(contentOf(plan(smallUnit(lots())), FILE, "lot", "product_quantity")[0]).toEqual(["", 790]);
});
