import { describe, expect, test } from "vitest";
import { usableLots } from "../../../src/core/plan/store/usableLots.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { UsageRow } from "../../../src/core/sheets/usage.ts";
import { inMeasure } from "../../../src/core/stock/inMeasure.ts";
import { ratesOfItem } from "../../../src/core/stock/ratesOfItem.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { tableOf } from "../smallUnit.ts";

describe("rates of an item", () => {
	const line = (basis: UsageRow["basis"], quantity: number): UsageRow => ({
		item: "x",
		basis,
		quantity,
		note: "",
	});
	const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
	test.each([
		["nothing", [], none],
		["a day", [line("day", 2)], { ...none, perDay: 2 }],
		["a round", [line("round", 2)], { ...none, perRound: 2 }],
		["a load", [line("load", 2)], { ...none, perLoad: [2] }],
		["a kit", [line("kit", 2)], { ...none, perKit: [2] }],
		["a piece: five in a kit", [line("piece", 2)], { ...none, perKit: [10] }],
		["a person in a round: three of them", [line("worker_round", 2)], { ...none, perRound: 6 }],
		["a descaling", [line("descale", 2)], { ...none, perDescale: 2 }],
		["lines of the same count", [line("day", 1), line("day", 2)], { ...none, perDay: 3 }],
		[
			"kit and piece, round and person",
			[line("kit", 1), line("piece", 1), line("round", 1), line("worker_round", 1)],
			{ ...none, perKit: [6], perRound: 4 },
		],
	])("%s", (_what, usage, rates) => {
		expect(
			answerOf(ratesOfItem, { usage, workers: 3, piecesInKits: [5], loads: soaks(3) }),
		).toEqual(rates);
	});

	test("kinds of kit have their own pieces", () => {
		const usage = [line("piece", 2), line("kit", 1)];
		expect(
			answerOf(ratesOfItem, { usage, workers: 1, piecesInKits: [5, 7, 0], loads: soaks(3) }).perKit,
		).toEqual([11, 15, 1]);
	});
});

describe("the store's measure", () => {
	test.each([
		[790, "mL", "L", 0.79],
		[790, "mL", "ml", 790],
		[790, "mL", " Litres ", 0.79],
		[790, "mL", "litre", 0.79],
		[8, "g", "kg", 0.008],
		[8, "g", "G", 8],
		[4, "tablet", "tablets", 4],
		[4, "tablet", "Comprimés", 4],
		[4, "tablet", "comprimé", 4],
	])("%d %s in %s", (quantity, from, to, expected) => {
		expectWithin(answerOf(inMeasure, { quantity, from, to }), expected, 1e-12, to);
	});

	test.each([
		["mL", "kg"],
		["g", "L"],
		["tablet", "g"],
		["mL", "bottle"],
		["mL", ""],
		["mL", "constructor"],
		["mL", "__proto__"],
	])("%s cannot be counted in %j", (from, to) => {
		expect(refusalOf(inMeasure, { quantity: 1, from, to })).toMatchObject([
			{ code: "measure-mismatch", received: to, file: "items.csv", column: "measure" },
		]);
	});
});

describe("usable lots", () => {
	const read = readWorkbook({
		tables: {
			"unit.csv": tableOf("key,value\nplan_start,2027-03-01"),
			"lots.csv": tableOf(`item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,late,5,,,,2027-09-01
			liquid,early,5,,,,2027-03-10
			liquid,never,5,,,,
			liquid,overdue,5,,,2027-02-27,2027-09-01
			liquid,came,5,,2027-02-28,2027-02-27,2027-09-03
			liquid,empty,0,,,,2027-09-01
			liquid,coming,5,,,2027-03-05,2027-09-02
			powder,other,5,,,,2027-09-01`),
		},
	});
	test.each([
		["2027-03-01", ["early", "late", "came", "never"]],
		["2027-03-05", ["early", "late", "coming", "came", "never"]],
		["2027-03-10", ["early", "late", "coming", "came", "never"]],
		["2027-03-11", ["late", "coming", "came", "never"]],
		["2028-01-01", ["never"]],
	])("on %s, first to expire first: %j", (day, names) => {
		expect(usableLots(read, "liquid", day).map((row) => row.value.lot)).toEqual(names);
	});

	test("of an item without lots there are none", () => {
		expect(usableLots(read, "tablets", "2027-03-01")).toEqual([]);
	});
});
