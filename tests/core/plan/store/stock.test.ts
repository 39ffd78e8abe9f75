import { describe, expect, test } from "vitest";
import { type Plan, plan } from "../../../../src/core/plan/plan.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import { contentOf } from "../../contentOf.ts";
import { smallUnit } from "../../smallUnit.ts";
import { orderOf, planOfStore, type Store } from "../oneItem.ts";

const columns = ["lot", "on_hand", "counted_difference", "usable_until", "wasted", "remark"];
const stockOf = (store: Store) => contentOf(planOfStore(store), "stock.csv", ...columns);
/** Last whole day on which a liquid at 25 °C is strong enough: the law of Adam and Gordon, written out again. */
function lastStrongDay(madeOn: string, from: number, wanted: number, factor: number): string {
	const kelvin = 298.15;
	const rate =
		factor *
		10 ** (0.149 * ((2 * from) / 70.906 + 0.05)) *
		(2.083e10 * kelvin * Math.exp(-1.018e5 / (8.314 * kelvin)) * Math.exp(-56.5 / 8.314));
	const seconds = (70.906 / wanted - 70.906 / from) / rate;
	return addDays(madeOn, Math.floor(seconds / 86_400));
}
const entry = (day: string, kind: string, quantity: number | string, lot = "S1") =>
	`2027-02-${day},soap,${lot},${kind},${quantity},`;

describe("stock by lot", () => {
	test.each<[string, Store, unknown[][]]>([
		["no lots", {}, []],
		["a lot as it stands", { lots: ["S1 60 - - - -"] }, [["S1", 60, "", "", 0, ""]]],
		[
			"receipts, issues and a count, in any order of lines",
			{
				lots: ["S1 60 - - - -"],
				journal: [entry("03", "count", 50), entry("01", "receipt", 5), entry("02", "issue", 12)],
			},
			[["S1", 50, "-3", "", 0, ""]],
		],
		[
			"a count that finds more",
			{ lots: ["S1 60 - - - -"], journal: [entry("03", "count", 61.5)] },
			[["S1", 61.5, "+1.5", "", 0, ""]],
		],
		[
			"a count that agrees",
			{ lots: ["S1 60 - - - -"], journal: [entry("03", "count", 60)] },
			[["S1", 60, "0", "", 0, ""]],
		],
		[
			"more issued than there was",
			{ lots: ["S1 60 - - - -"], journal: [entry("03", "issue", 64)] },
			[["S1", 0, "", "", 0, "4 more went out than the books held: count this lot."]],
		],
		[
			"an old lot is waste, all of it",
			{ lots: ["S1 60 - - - 2027-02-10"] },
			[["S1", 60, "", "2027-02-10", 60, ""]],
		],
		[
			"what of a lot will not be used by then",
			{ lots: ["S2 60 - - - -", "S1 60 - - - 2027-03-10"] },
			[
				["S2", 60, "", "", 0, ""],
				["S1", 60, "", "2027-03-10", 40, ""],
			],
		],
		[
			"what the journal leaves is what goes to waste",
			{ lots: ["S1 60 - - - 2027-03-10"], journal: [entry("03", "issue", 35)] },
			[["S1", 25, "", "2027-03-10", 5, ""]],
		],
	])("%s", (_what, store, rows) => {
		expect(stockOf(store)).toEqual(rows);
	});

	test("the order goes by what the journal leaves", () => {
		const lots = ["S1 60 - - - -"];
		const packs = (journal: string[]) =>
			orderOf(planOfStore({ lots, journal }), "usable", "order_packs");
		expect(packs([])).toEqual([60, 0]);
		expect(packs([entry("01", "issue", 52)])).toEqual([8, 2]);
		expect(packs([entry("01", "count", 0)])).toEqual([0, 3]);
	});
});

describe("a chlorine product in the store", () => {
	const chlorine = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		liquid,liquid,3.5,pct_w_v,,20,,yes
		powder,powder,70,pct_w_w,,,0,no
		tablets,tablet,1.5,g_per_tablet,,,,no`;
	const made = (target: number, ...lots: string[]) =>
		planOfStore({
			settings: { target_strength_pct: target },
			files: {
				"chlorine.csv": chlorine,
				"lots.csv": [
					"item,lot,quantity,made_on,received_on,arrives_on,expires_on",
					...lots.map((lot) => `liquid,${lot}`),
				].join("\n"),
			},
		});
	const remarkOf = (store: Plan) =>
		contentOf(store, "order.csv", "item", "usable", "remark").find(([item]) => item === "liquid");

	test("too weak already: waste, with its reason, and not usable", () => {
		const store = made(2, "L1,10,2026-03-01,,,2028-03-01", "L2,900,2027-02-28,,,2027-09-01");
		expect(contentOf(store, "stock.csv", "lot", "usable_until", "wasted")[0]).toEqual([
			"L1",
			"not usable",
			10,
		]);
		expect(remarkOf(store)?.[2]).toContain(
			"Lot L1: 10 unused and too weak for the strength wanted already.",
		);
	});

	test("too weak one day: usable until the day before, and waste from then on", () => {
		const store = made(2, "L1,200,2027-02-20,,,2028-03-01");
		const [[until, wasted] = []] = contentOf(store, "stock.csv", "usable_until", "wasted");
		// Fading 20 times as fast as the law, from 35 to 20 g/L.
		expect(until).toBe(lastStrongDay("2027-02-20", 35, 20, 20));
		expect(wasted).toBeGreaterThan(0);
		expect(wasted).toBeLessThan(200);
		expect(remarkOf(store)?.[2]).toContain(
			`Lot L1: ${Number((wasted as number).toFixed(1))} unused and too weak for the strength wanted on ${addDays(String(until), 1)}.`,
		);
	});

	test("out of date before it is too weak", () => {
		const store = made(0.5, "L1,1000,2027-02-20,,,2027-03-20");
		expect(remarkOf(store)?.[2]).toContain("out of date on 2027-03-21");
	});
});

describe("what cannot be right is said with its place", () => {
	const lots = (...rows: string[]) => ({
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on\n${rows.join("\n")}`,
	});
	const items = (row: string) => ({
		"items.csv": `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
			liquid,other,L,5,3,7,10,0.95
			${row}`,
	});
	test.each<[string, Record<string, string>, string, string, number, string]>([
		[
			"a lot listed twice",
			lots("liquid,L1,5,,,,", "liquid,L1,9,,,,"),
			"doubled-row",
			"lots.csv",
			2,
			"item",
		],
		["a negative quantity", lots("liquid,L1,-5,,,,"), "bad-cell", "lots.csv", 2, "quantity"],
		["an absurd quantity", lots("liquid,L1,1e12,,,,"), "bad-cell", "lots.csv", 2, "quantity"],
		["no quantity", lots("liquid,L1,,,,,"), "bad-cell", "lots.csv", 2, "quantity"],
		[
			"a date that is none",
			lots("liquid,L1,5,,,,2027-02-29"),
			"bad-cell",
			"lots.csv",
			2,
			"expires_on",
		],
		[
			"a pack of nothing",
			items("soap,other,bar,0,5,7,0,0.95"),
			"bad-cell",
			"items.csv",
			3,
			"pack_size",
		],
		[
			"a negative price",
			items("soap,other,bar,1,-5,7,0,0.95"),
			"bad-cell",
			"items.csv",
			3,
			"pack_price",
		],
		[
			"more than everything wasted",
			items("soap,other,bar,1,5,7,100,0.95"),
			"bad-cell",
			"items.csv",
			3,
			"wastage_pct",
		],
		["certainty", items("soap,other,bar,1,5,7,0,1"), "bad-cell", "items.csv", 3, "service_level"],
		[
			"a delivery of years",
			items("soap,other,bar,1,5,900,0,0.95"),
			"bad-cell",
			"items.csv",
			3,
			"lead_days",
		],
		[
			"an item listed twice",
			items("liquid,other,L,5,3,7,10,0.95"),
			"doubled-row",
			"items.csv",
			2,
			"item",
		],
		[
			"use of an item that the store does not list",
			{ "usage.csv": "item,basis,quantity,note\nsop,day,2," },
			"unknown-item",
			"usage.csv",
			2,
			"item",
		],
	])("%s", (_what, files, code, file, line, column) => {
		const found = plan(smallUnit(files)).problems.filter((p) => p.file === file);
		expect(found[0]).toMatchObject({ code, file, line, column, weight: "error" });
		expect(found[0]?.message).not.toBe("");
	});

	test("a price with a decimal comma, or none, is a price and no price", () => {
		const unit = smallUnit(items("soap,other,bar,1,,7,0,0.95"));
		const table = unit.tables["items.csv"];
		const rows = table?.rows.map((row) => row.map((cell) => (cell === "3" ? "3,25" : cell))) ?? [];
		const made = plan({
			tables: { ...unit.tables, "items.csv": { header: table?.header ?? [], rows } },
		});
		expect(contentOf(made, "order.csv", "item", "pack_price")).toEqual([
			["liquid", 3.25],
			["soap", null],
		]);
	});
});

// calculations.md: no number is invented to fill a hole. An issue that nobody could read left the
// lot as full as before, and nothing was ordered.
describe("a line of the journal that cannot be read", () => {
	const known = (...journal: string[]) => {
		const store = { lots: ["S1 60 - - - -", "S2 5 - - - -"], journal };
		const [one, two] = stockOf(store).map(([, onHand]) => onHand !== undefined);
		return { one, two, order: orderOf(planOfStore(store), "order_packs")[0] !== undefined };
	};
	const none = { one: false, two: true, order: false };
	const all = { one: true, two: true, order: true };
	test.each<[string, string[], ReturnType<typeof known>]>([
		["what it is", [entry("03", "isue", 50)], none],
		["how much", [entry("03", "issue", "many")], none],
		["its day", ["2027-02-30,soap,S1,issue,50,"], none],
		["its lot", ["2027-02-03,soap,,issue,50,"], { one: false, two: false, order: false }],
		["of another item", ["2027-02-03,powder,S1,isue,50,"], all],
		["counted since", [entry("03", "isue", 50), entry("04", "count", 10)], all],
		["on the day of the count", [entry("04", "isue", 50), entry("04", "count", 10)], none],
		["dated after the plan", ["2027-05-03,soap,S1,isue,50,"], all],
	])("%s", (_what, journal, expected) => {
		expect(known(...journal)).toEqual(expected);
	});
});
