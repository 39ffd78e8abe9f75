import { describe, expect, test } from "vitest";
import type { Figure } from "../../../src/core/calculation.ts";
import { WIPE_LITRES } from "../../../src/core/chlorine/wipeLitres.ts";
import { type Plan, plan } from "../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../expectWithin.ts";
import { codesOf, rowsOf, valueIn } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";
import { planOfStore } from "./oneItem.ts";

/** Every figure that a figure comes from, however far back, and the figure itself, each once. */
function behind(figure: Figure<unknown>, known = new Set<Figure<unknown>>()): Figure<unknown>[] {
	if (known.has(figure)) return [];
	known.add(figure);
	if (figure.origin.kind !== "computed") return [figure];
	return [figure, ...Object.values(figure.origin.inputs).flatMap((each) => behind(each, known))];
}

/** A cell of the row that has this text in this column. */
function cellOf(made: Plan, file: string, named: readonly [string, string], column: string) {
	const row = rowsOf(made, file).find((each) => valueIn(each[named[0]]) === named[1]);
	const cell = row?.[column];
	if (!cell) throw new Error(`no ${column} for ${named[1]} in ${file}`);
	return cell;
}

/** What is said of the typed cells of a column behind a figure: "typed 7", "default 7". */
function saidOf(figure: Figure<unknown>, file: string, column: string): string[] {
	const said = behind(figure).flatMap((each) =>
		"place" in each.origin && each.origin.place.file === file && each.origin.place.column === column
			? [`${each.origin.kind} ${valueIn(each)}`]
			: [],
	);
	return [...new Set(said)];
}

describe("a blank cell of the store's list is a default, a filled one is typed", () => {
	const made = plan(
		unitWith(
			{},
			{
				"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level,shelf_life_days
					blank,other,bar,,5,,,,
					typed,other,bar,1,5,7,0,0.95,
					liquid,other,L,5,,7,10,0.95,`,
				"usage.csv": "item,basis,quantity,note\nblank,day,2,\ntyped,day,2,",
			},
		),
	);
	const packs = (item: string) => cellOf(made, "order.csv", ["item", item], "order_packs");
	test.each([
		["lead_days", 7],
		["wastage_pct", 0],
		["service_level", 0.95],
		["pack_size", 1],
	])("%s", (column, value) => {
		expect(saidOf(packs("blank"), "items.csv", column)).toEqual([`default ${value}`]);
		expect(saidOf(packs("typed"), "items.csv", column)).toEqual([`typed ${value}`]);
	});

	test.each([
		["order.csv", "run_out_on"],
		["order.csv", "order_by"],
		["order.csv", "months_of_stock"],
		["order.csv", "remark"],
		["order.csv", "take_run_out_on"],
		["order.csv", "full_run_out_on"],
		["stock-ahead.csv", "usable"],
		["stock-ahead.csv", "reserve"],
	])("wastage is behind what compares use with stock: %s, %s", (file, column) => {
		const cell = cellOf(made, file, ["item", "typed"], column);
		expect(saidOf(cell, "items.csv", "wastage_pct")).toContain("typed 0");
	});

	test.each([
		["order.csv", "use_expected"],
		["supply-use.csv", "expected"],
	])("and not behind use itself: %s, %s", (file, column) => {
		const cell = cellOf(made, file, ["item", "typed"], column);
		expect(saidOf(cell, "items.csv", "wastage_pct")).toEqual([]);
	});

	test("the same number follows from both", () => {
		expect(valueIn(packs("blank"))).toBe(valueIn(packs("typed")));
	});

	test("how long a new lot keeps is typed; of what fades it is worked out", () => {
		const keeps = (item: string) => {
			const { origin } = cellOf(made, "order.csv", ["item", item], "remark");
			return origin.kind === "computed" ? origin.inputs.keepsDays?.origin.kind : undefined;
		};
		expect(keeps("typed")).toBe("typed");
		expect(keeps("liquid")).toBe("computed");
	});
});

describe("a chlorine product", () => {
	const strength = (fadeFactor: string) =>
		cellOf(
			plan(
				unitWith(
					{},
					{
						"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
							liquid,liquid,3.5,pct_w_v,,${fadeFactor},,yes`,
						"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
							liquid,L1,20,2027-01-30,,,`,
					},
				),
			),
			"strength.csv",
			["lot", "L1"],
			"strength_today",
		);
	test.each([
		["", "default 1.3"],
		["1.3", "typed 1.3"],
		["2", "typed 2"],
	])('with "%s" typed as its fade factor', (typed, said) => {
		expect(saidOf(strength(typed), "chlorine.csv", "fade_factor")).toEqual([said]);
	});
});

describe("stock on hand", () => {
	const store = (...journal: string[]) =>
		planOfStore({ lots: ["S1 60 - - - 2027-03-10", "S2 30 - - - -"], journal });
	const onHand = (made: Plan, lot = "S1") => cellOf(made, "stock.csv", ["lot", lot], "on_hand");
	const issue = "2027-02-03,soap,S1,issue,35,";
	const count = "2027-02-04,soap,S1,count,24,";

	test("is typed in the list of lots as long as nothing was entered", () => {
		expect(onHand(store()).origin).toMatchObject({
			kind: "typed",
			place: { file: "lots.csv", line: 2, column: "quantity" },
		});
		expect(onHand(store(issue), "S2").origin.kind).toBe("typed");
	});

	test("is worked out from the list and the entries after the first of them", () => {
		const figure = onHand(store(issue, count));
		expect(valueIn(figure)).toBe(24);
		expect(figure.origin).toMatchObject({ kind: "computed", calculation: { key: "on_hand" } });
		expect(saidOf(figure, "lots.csv", "quantity")).toEqual(["typed 60"]);
		const entries = behind(figure).flatMap(({ origin }) =>
			"place" in origin && origin.place.file === "journal.csv" ? [origin.place.line] : [],
		);
		expect(entries).toEqual([2, 3]);
	});

	test("what the order goes by comes from the entries too", () => {
		const usable = cellOf(store(issue), "order.csv", ["item", "soap"], "usable");
		expect(
			behind(usable).map(({ origin }) => "calculation" in origin && origin.calculation.key),
		).toContain("on_hand");
		expect(saidOf(usable, "lots.csv", "quantity")).toEqual(["typed 60", "typed 30"]);
	});

	test("waste is a figure of the projection; where that has no value it has none", () => {
		const known = cellOf(store(), "stock.csv", ["lot", "S1"], "wasted");
		expect(known.origin).toMatchObject({ kind: "computed", calculation: { key: "wasted" } });
		const unknown = planOfStore({
			lots: ["S1 60 - - - 2027-03-10"],
			usage: ["soap,day,two,"],
		});
		expect(valueIn(cellOf(unknown, "stock.csv", ["lot", "S1"], "wasted"))).toBeUndefined();
	});
});

describe("the ward's other solution in what is asked of the product", () => {
	const shareIn = (...lines: string[]) => {
		const made = plan(
			unitWith(
				{},
				{ "ward-solution.csv": ["use,litres_per_day,strength_pct,note", ...lines].join("\n") },
			),
		);
		const share = behind(cellOf(made, "order.csv", ["item", "liquid"], "run_out_on")).find(
			({ origin }) => origin.kind === "computed" && origin.calculation.key === "ward_share",
		);
		if (!share) throw new Error("no share of the ward");
		return { share, made };
	};

	test("is worked out from its litres and strengths, and what a preparation takes", () => {
		const { share } = shareIn("floors,20,0.1,", "spills,2,0.5,");
		const { settings } = readWorkbook(unitWith({}));
		const one =
			(Number(valueIn(settings.soak_fill_litres)) + WIPE_LITRES) *
			Number(valueIn(settings.target_strength_pct));
		expectWithin(valueIn(share) as number, (20 * 0.1 + 2 * 0.5) / one, 1e-12, "preparations");
		expect(behind(share).map(({ origin }) => "place" in origin && origin.place.file)).toContain(
			"ward-solution.csv",
		);
	});

	test("has no value, and never 0, where a line cannot be read", () => {
		const { share, made } = shareIn("floors,twenty,0.1,");
		expect(share.outcome.ok).toBe(false);
		expect(codesOf(cellOf(made, "order.csv", ["item", "liquid"], "run_out_on"))).toContain(
			"bad-cell",
		);
	});

	test("is 0 where nothing else is mixed", () => {
		expect(valueIn(shareIn().share)).toBe(0);
	});
});
