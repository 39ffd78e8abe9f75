import { describe, expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { contentOf } from "../../contentOf.ts";
import { codesOf, rowsOf, valueIn } from "../../planCells.ts";
import { planOfStore } from "../oneItem.ts";

interface Change {
	readonly money?: string;
	/** Price, depot's packs and need of each item, "-" for a blank. */
	readonly soap?: string;
	readonly gauze?: string;
	readonly log?: string;
	readonly settings?: Record<string, string | number>;
}

/**
 * Of each item two go each day, packs of ten, seven days to delivery, seven between orders: 28 are wanted.
 * Four bars of soap and 20 of gauze are here, so 24, 8 and 28 are short: three packs, one, and three.
 * From 8 March on soap is short at once; with one pack on the 13th (4 + 10 bars, of which seven days'
 * use is lost before), gauze on the 11th.
 */
function planWith({
	money,
	soap = "5 - yes",
	gauze = "8 - yes",
	log = "1 - -",
	settings,
}: Change = {}) {
	const line = (text: string) => text.replaceAll("-", "").split(" ").join(",");
	return planOfStore({
		settings: { ...(money === undefined ? {} : { order_money: money }), ...settings },
		files: {
			"items.csv": `item,group,measure,pack_size,lead_days,wastage_pct,service_level,pack_price,depot_packs,round_needs_it
				soap,other,bar,10,7,0,0.95,${line(soap)}
				gauze,gauze,piece,10,7,0,0.95,${line(gauze)}
				log,other,piece,10,7,0,0.95,${line(log)}`,
			"usage.csv": "item,basis,quantity,note\nsoap,day,2,\ngauze,day,2,\nlog,day,2,",
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				soap,S1,4,,,,
				gauze,G1,20,,,,`,
		},
	});
}
const order = (change?: Change, ...columns: string[]) =>
	contentOf(planWith(change), "order.csv", "item", ...columns).map((row) => row.join(" "));
const taking = (change?: Change) =>
	contentOf(
		planWith(change),
		"take-first.csv",
		"place",
		"item",
		"packs",
		"taken",
		"spent",
		"out_without",
		"stops",
	).map((row) => row.join(" "));

describe("the order with a budget", () => {
	test("is taken pack after pack, by the day each item runs out without the next", () => {
		expect(taking()).toEqual([
			"1 soap 1 yes 5 2027-03-08 safe_rounds",
			"2 gauze 1 yes 13 2027-03-11 safe_rounds",
			"3 soap 2 yes 23 2027-03-13 safe_rounds",
			"4 log 3 yes 26 2027-03-08 less",
		]);
	});

	test.each<[string, Change, string[]]>([
		["nothing is said: all of it", {}, ["soap 3 3 15", "gauze 1 1 8", "log 3 3 3"]],
		["the money it costs", { money: "26" }, ["soap 3 3 15", "gauze 1 1 8", "log 3 3 3"]],
		["a little less", { money: "25.99" }, ["soap 3 3 15", "gauze 1 1 8", "log 3 2 2"]],
		[
			"what a round can do without waits for the rest",
			{ money: "22" },
			["soap 3 2 10", "gauze 1 1 8", "log 3 0 0"],
		],
		[
			"a pack that is too dear is left out",
			{ money: "12" },
			["soap 3 2 10", "gauze 1 0 0", "log 3 0 0"],
		],
		["no money", { money: "0" }, ["soap 3 0 0", "gauze 1 0 0", "log 3 0 0"]],
		["the depot sends part", { soap: "5 1 yes" }, ["soap 3 1 5", "gauze 1 1 8", "log 3 3 3"]],
		["the depot sends none", { soap: "5 0 yes" }, ["soap 3 0 0", "gauze 1 1 8", "log 3 3 3"]],
		["the depot could send more", { soap: "5 9 yes" }, ["soap 3 3 15", "gauze 1 1 8", "log 3 3 3"]],
		[
			"what the depot does not send frees money",
			{ money: "14", soap: "5 1 yes" },
			["soap 3 1 5", "gauze 1 1 8", "log 3 1 1"],
		],
		[
			"no price, and no money counted",
			{ soap: "- - yes" },
			["soap 3 3 ", "gauze 1 1 8", "log 3 3 3"],
		],
	])("%s", (_what, change, expected) => {
		expect(order(change, "order_packs", "take_packs", "take_cost")).toEqual(expected);
	});

	test("without a price nothing tells whether the money pays for it: a dash with the reason, never 0", () => {
		const made = planWith({ money: "20", soap: "- - yes" });
		const [soap, gauze, log] = rowsOf(made, "order.csv");
		expect([soap?.take_packs, soap?.take_run_out_on].map((cell) => cell && codesOf(cell))).toEqual([
			["price-not-known"],
			["price-not-known"],
		]);
		expect(problemsOf(soap?.take_packs?.outcome as never)).toMatchObject([
			{ file: "items.csv", line: 2, column: "pack_price" },
		]);
		expect([gauze?.take_packs, log?.take_packs].map((cell) => cell && valueIn(cell))).toEqual([
			1, 3,
		]);
		expect(soap?.full_run_out_on && valueIn(soap.full_run_out_on)).toBe("2027-03-23");
	});

	test("says until when each lasts, beside the whole order, and what then stops", () => {
		expect(order({ money: "12" }, "take_run_out_on", "full_run_out_on", "stops")).toEqual([
			"soap 2027-03-18 2027-03-23 safe_rounds",
			"gauze 2027-03-11 2027-03-16 safe_rounds",
			"log 2027-03-08 2027-03-23 less",
		]);
	});

	test("money that cannot be read leaves no item with a number", () => {
		const made = planWith({ money: "much" });
		const cells = rowsOf(made, "order.csv").map(({ take_packs }) => take_packs);
		expect(cells.map((cell) => cell?.outcome.ok)).toEqual([false, false, false]);
		expect(rowsOf(made, "take-first.csv")).toEqual([]);
		expect(made.problems.some(({ file, line }) => file === "unit.csv" && line !== null)).toBe(true);
		expect(order({ money: "much" }, "order_packs")).toEqual(["soap 3", "gauze 1", "log 3"]);
	});

	test("the product in use stops disinfection, and is taken as it will be when it comes", () => {
		const made = planOfStore({
			files: { "usage.csv": "item,basis,quantity,note\nsoap,round,2," },
			settings: { births_per_day: 20 },
		});
		const [first] = contentOf(made, "take-first.csv", "item", "stops", "out_without");
		expect(first).toEqual(["liquid", "disinfection", "2027-03-08"]);
	});
});
