import { describe, expect, test } from "vitest";
import { strengthOfLiquid } from "../../../../src/core/chlorine/strengthOfLiquid.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { answerOf } from "../../answerOf.ts";
import { contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const FILE = "product-compare.csv";
const CHLORINE =
	"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use,label_confirmed";
const ITEMS = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";
const one = (product: string, item: string) => ({
	// Confirmed: what is compared here is weaker than such products are sold.
	"chlorine.csv": `${CHLORINE}\n${product},yes,yes`,
	"items.csv": [ITEMS, "gauze squares,gauze,piece,100,4,7,5,0.95", item].join("\n"),
});
const made = plan(smallUnit());
const litresPerDay = (numberIn(totalOf(made, "solution_litres"), "expected") as number) / 7;

describe("the same litres from each product, over a week and a quarter", () => {
	test("litres, and who is compared", () => {
		const rows = contentOf(made, FILE, "product", "period", "litres", "measure");
		expect(rows.map(([product, period, , measure]) => [product, period, measure])).toEqual(
			[
				["liquid", "mL"],
				["powder", "g"],
				["tablets", "tablet"],
			].flatMap(([product, measure]) =>
				["week", "quarter"].map((period) => [product, period, measure]),
			),
		);
		rows.forEach(([, period, litres]) => {
			const days = period === "week" ? 7 : 91;
			expectWithin(Number(litres), days * litresPerDay, 1e-9, "L");
		});
	});

	test.each([
		[0, "quantity", (91 * litresPerDay * 5) / 0.035],
		[1, "quantity", (91 * litresPerDay * 5) / 0.7],
		[2, "quantity", (91 * litresPerDay * 5) / 1.5],
		[0, "weight_kg", (91 * litresPerDay * 5) / 0.035 / 1000],
		[1, "weight_kg", (91 * litresPerDay * 5) / 0.7 / 1000],
	] as const)("product %d: %s", (product, column, expected) => {
		expectWithin(
			numberIn(rowsOf(made, FILE)[2 * product + 1], column),
			expected,
			1e-6 * expected,
			column,
		);
	});

	test("what tablets weigh is not known, and nothing is lost where nothing fades", () => {
		expect(rowsOf(made, FILE).map((row) => valueIn(row.weight_kg) === null)).toEqual([
			false,
			false,
			false,
			false,
			true,
			true,
		]);
		for (const row of rowsOf(made, FILE)) expect(numberIn(row, "lost_g")).toBe(0);
	});
});

describe("the order interval", () => {
	const smallBottles = "liquid,other,mL,10,1,7,0,0.95";
	const intervals = (product: string, item: string, settings = {}) =>
		contentOf(plan(unitWith(settings, one(product, item))), FILE, "order_every_days").flat();

	test("is the longest where nothing fades and one pack lasts a quarter", () => {
		expect(intervals("liquid,liquid,3.5,pct_w_v,,0,", "liquid,other,L,50,9,7,0,0.95")).toEqual([
			91, 91,
		]);
	});

	test("is the shortest where a hot store fades the product fast", () => {
		expect(intervals("liquid,liquid,15,pct_w_v,,3,", smallBottles, { store_c: 45 })).toEqual([
			7, 7,
		]);
	});

	test("is what every interval tried one by one comes to", () => {
		const settings = { store_c: 35 };
		const strength = (days: number) =>
			answerOf(strengthOfLiquid, { gramsPerLitre: 120, storeC: 35, days, fadeFactor: 1.3 });
		for (const size of [500, 1000, 5000, 20_000]) {
			const tried = [7, 14, 28, 56, 91].map((days) => {
				let mL = 0;
				for (let day = 0; day < days; day++) mL += (1000 * litresPerDay * 5) / strength(day);
				return { days, mL, packs: Math.ceil(mL / size) };
			});
			const best = tried.reduce((a, b) => (b.packs / b.days <= a.packs / a.days ? b : a));
			const item = `liquid,other,mL,${size},2,7,0,0.95`;
			const rows = rowsOf(
				plan(unitWith(settings, one("liquid,liquid,12,pct_w_v,,1.3,", item))),
				FILE,
			);
			expect(rows.map((row) => numberIn(row, "order_every_days"))).toEqual([best.days, best.days]);
			const share = 91 / best.days;
			const [, quarter] = rows;
			expectWithin(numberIn(quarter, "packs"), best.packs * share, 1e-9, "packs");
			expectWithin(numberIn(quarter, "cost"), 2 * best.packs * share, 1e-9, "currency");
			expectWithin(numberIn(quarter, "quantity"), best.mL * share, 1e-6, "mL");
			const lost = (best.mL * 0.12 - best.days * litresPerDay * 5) * share;
			expectWithin(numberIn(quarter, "lost_g"), lost, 1e-6, "g");
		}
	});
});

describe("a product too weak for the strength wanted", () => {
	const powder = "powder,other,g,500,8,14,5,0.95";
	test.each([
		["by its label", "powder,powder,0.4,pct_w_w,,,0"],
		["within the shortest interval", "powder,powder,0.5,pct_w_w,,,50"],
		["faded to nothing", "powder,powder,0.51,pct_w_w,,,50"],
	])("%s is not compared, and it is said why", (_what, product) => {
		for (const births of [0, 6]) {
			const rows = rowsOf(plan(unitWith({ births_per_day: births }, one(product, powder))), FILE);
			for (const row of rows) expect(codesOf(row.packs)).toEqual(["too-weak"]);
		}
	});

	test("after some weeks is ordered at least that often", () => {
		// 0.6 % less 2 points a year is below 0.5 % after 18 days.
		const rows = rowsOf(plan(smallUnit(one("powder,powder,0.6,pct_w_w,,,2", powder))), FILE);
		expect(rows.map((row) => Number(valueIn(row.order_every_days)) <= 14)).toEqual([true, true]);
	});
});

describe("packs and prices", () => {
	const liquid = "liquid,liquid,3.5,pct_w_v,1.1,0,";
	const row = (item: string) => rowsOf(plan(smallUnit(one(liquid, item))), FILE)[0];

	test("without a price there is no cost, and there are packs", () => {
		const blank = row("liquid,other,L,5,,7,0,0.95");
		expect(valueIn(blank?.cost)).toBe(null);
		expect(numberIn(blank, "packs")).toBeGreaterThan(0);
	});

	test("a price of nothing is a price", () => {
		expect(numberIn(row("liquid,other,L,5,0,7,0,0.95"), "cost")).toBe(0);
	});

	test("a pack of 5 L is one of 5,000 mL", () => {
		const of = (item: string) =>
			contentOf(plan(smallUnit(one(liquid, item))), FILE, "packs", "cost");
		expect(of("liquid,other,L,5,3,7,0,0.95")).toEqual(of("liquid,other,mL,5000,3,7,0,0.95"));
	});

	test("a product whose fading nobody can tell is not compared, and the others are", () => {
		const rows = rowsOf(
			plan(
				unitWith(
					{ store_c: "warm" },
					{
						"chlorine.csv": `${CHLORINE}\nliquid,liquid,3.5,pct_w_v,,1,,yes,yes\npowder,powder,70,pct_w_w,,,0,no,yes`,
					},
				),
			),
			FILE,
		);
		expect(codesOf(rows[0]?.packs)).toEqual(["bad-cell"]);
		expect(numberIn(rows[2], "packs")).toBeGreaterThan(0);
	});

	test("a liquid weighs by its density", () => {
		const kg = numberIn(row("liquid,other,L,5,3,7,0,0.95"), "weight_kg");
		expectWithin(kg, (1.1 * 7 * litresPerDay * 5) / 35, 1e-9, "kg");
	});

	test("packs in a measure that does not fit leave the product without a comparison, and the others with theirs", () => {
		const rows = rowsOf(
			plan(
				smallUnit({
					"items.csv": [ITEMS, "liquid,other,L,5,3,7,10,0.95", "powder,other,L,1,8,14,5,0.95"].join(
						"\n",
					),
					"usage.csv": "item,basis,quantity,note",
				}),
			),
			FILE,
		);
		expect(codesOf(rows[2]?.packs)).toEqual(["measure-mismatch"]);
		expect(numberIn(rows[0], "packs")).toBeGreaterThan(0);
	});
});
