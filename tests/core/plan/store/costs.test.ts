import { describe, expect, test } from "vitest";
import { expectWithin } from "../../../expectWithin.ts";
import { contentOf } from "../../contentOf.ts";
import { planOfStore, type Store } from "../oneItem.ts";

const costs = (store: Store = {}) =>
	contentOf(
		planOfStore(store),
		"costs.csv",
		"what",
		"per_week",
		"per_birth",
		"per_kit",
		"saved_per_week",
		"remark",
	);
/** Prices for the products, soap being the only other item. */
const priced = (liquid: string, powder: string, tablets: string) => ({
	files: {
		"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
			soap,other,bar,10,5,7,0,0.95
			liquid,other,L,5,${liquid},7,10,0.95
			powder,other,g,500,${powder},14,5,0.95
			tablets,other,tablet,100,${tablets},14,5,0.95`,
	},
});
const withoutExpiry = { ready_life_days: 90 };

describe("as it is now", () => {
	test("two bars a day of a pack of ten at 5: 7 a week, by births and by kits", () => {
		const [now] = costs({ settings: withoutExpiry });
		const [what, week, birth, kit, saved, remark] = now ?? [];
		expect([what, saved, remark]).toEqual(["As it is now", "", "Without a price: liquid."]);
		expectWithin(week as number, 7, 1e-9, "a week");
		expectWithin(birth as number, 7 / 42, 1e-9, "a birth");
		expectWithin(kit as number, 7 / 4.2, 1e-6, "a kit");
	});

	test.each([1, 3, 7, 14, 100])("a plan of %d days is still told by the week", (plan_days) => {
		const [now] = costs({ settings: { ...withoutExpiry, plan_days } });
		expectWithin(now?.[1] as number, 7, 1e-9, "a week");
		expectWithin(now?.[2] as number, 1 / 6, 1e-9, "a birth");
	});

	test("the product in use costs what is measured out of it", () => {
		const one = costs(priced("0", "", ""))[0]?.[1] as number;
		const two = costs(priced("10", "", ""))[0]?.[1] as number;
		const three = costs(priced("20", "", ""))[0]?.[1] as number;
		expectWithin(one, 7, 1e-9, "a week");
		expect(two).toBeGreaterThan(one);
		expectWithin(three - two, two - one, 1e-9, "a week");
	});

	// calculations.md: rounds that mix nothing take none of the product, however weak it is.
	test.each([3.5, 0.3])("without any solution a product of %d %% costs nothing", (strength) => {
		const made = planOfStore({
			settings: { ...withoutExpiry, method: "boiling" },
			files: {
				...priced("3", "", "").files,
				"chlorine.csv": `product,form,strength,strength_measure,fade_factor,in_use
					liquid,liquid,${strength},pct_w_v,0,yes`,
			},
		});
		const [now] = contentOf(made, "costs.csv", "per_week", "remark");
		expect(now).toEqual([7, ""]);
		expect(contentOf(made, "supply-use.csv", "item", "expected", "set_aside")).toContainEqual([
			"liquid",
			0,
			0,
		]);
	});

	test("where nobody is born a birth has no cost", () => {
		const [now] = costs({ settings: { births_per_day: 0 } });
		expect([now?.[1], now?.[2]]).toEqual([7, null]);
	});

	test("without any price nothing costs anything, and all that is used is named", () => {
		const [now] = costs({ price: "" });
		expect([now?.[1], now?.[5]]).toEqual([0, "Without a price: liquid, soap."]);
	});

	test("items without a price are named in one order, in whatever order they are listed", () => {
		const listed = priced("", "", "").files["items.csv"].replace(",10,5,7,", ",10,,7,").split("\n");
		const [header = "", ...items] = listed;
		for (const rows of [items, items.toReversed(), [...items.slice(1), ...items.slice(0, 1)]]) {
			const [now] = costs({ files: { "items.csv": [header, ...rows].join("\n") } });
			expect(now?.[5]).toBe("Without a price: liquid, soap.");
		}
	});
});

describe("changes", () => {
	test("another product, and the other rule, the one that saves most first", () => {
		const rows = costs(priced("300", "1", "200"));
		expect(rows[0]?.[0]).toBe("As it is now");
		expect(rows.map(([what]) => what).sort()).toEqual([
			"As it is now",
			"Solution made once a day",
			"With powder",
			"With tablets",
		]);
		const weeks = rows.slice(1).map(([, week]) => week as number);
		expect(weeks).toEqual([...weeks].sort((a, b) => a - b));
		const now = rows[0]?.[1] as number;
		for (const [what, week, , , saved] of rows.slice(1)) {
			const difference = now - (week as number);
			expect(Math.abs(difference), String(what)).toBeGreaterThan(0.01);
			const shown = Number(String(saved).replace("−", "-"));
			expectWithin(shown, difference, 0.005, "a week");
			expect(String(saved)).toMatch(difference > 0 ? /^\+/ : /^−/);
		}
	});

	test("a change that costs the same saves 0", () => {
		const rows = costs(priced("0", "0", "0"));
		expect(rows.slice(1).map(([, , , , saved]) => saved)).toEqual(["0", "0", "0"]);
	});

	test("made once a day, the other rule is for each round", () => {
		const rows = costs({ settings: { solution_made: "each_day" } });
		expect(rows.map(([what]) => what)).toContain("Solution made for each round");
	});
});

// calculations.md: no number is invented to fill a hole. A sum without an item that is used said less than is paid.
test.each<[string, string, unknown]>([
	["that is used", "brush,other,piece,none,5,7,0,0.95", undefined],
	["that is used, without a name", ",other,piece,1,5,7,0,0.95", undefined],
	["of which nothing is said to go", "ribbon,other,piece,none,5,7,0,0.95", 7],
])("beside a row of items that cannot be read, of an item %s", (_what, row, week) => {
	const [now] = costs({
		usage: ["soap,day,2,", "brush,day,1,"],
		settings: withoutExpiry,
		files: {
			"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
				soap,other,bar,10,5,7,0,0.95
				liquid,other,L,5,,7,10,0.95
				${row}`,
		},
	});
	if (week === undefined) expect(now?.[1]).toBeUndefined();
	else expectWithin(now?.[1] as number, 7, 1e-9, "a week");
});
