import { expect, test } from "vitest";
import { kitsShort, type UnitRow, worstFirst } from "../../../src/core/units/worstFirst.ts";

const good: UnitRow = {
	unit: "Good",
	path: "good.zip",
	first_day: "2027-03-01",
	days: 7,
	births_expected: 20,
	kits_needed: 6,
	kits_in_service: 6,
	unmet_per_1000_uses: 0.5,
	problems: 0,
	advice: 0,
	first_run_out: null,
	first_run_out_item: "",
	orders_late: 0,
	last_counted: "2027-02-28",
	state: "in_order",
	in_words: "Nothing needs to be done now.",
};

test.each<[name: string, worse: Partial<UnitRow>, better: Partial<UnitRow>]>([
	[
		"what could not be read comes before what could not be planned",
		{ state: "not_read", kits_needed: null, kits_in_service: null },
		{ state: "not_planned", kits_in_service: 0 },
	],
	[
		"what could not be planned comes before a unit without a kit",
		{ state: "not_planned" },
		{ kits_in_service: 0, unmet_per_1000_uses: 900 },
	],
	[
		"too few kits come before what runs out tomorrow",
		{ kits_in_service: 5 },
		{ first_run_out: "2027-03-02", orders_late: 9, problems: 9 },
	],
	[
		"of those short of kits, the one without a ready kit more often",
		{ kits_in_service: 5, unmet_per_1000_uses: 30 },
		{ kits_in_service: 2, unmet_per_1000_uses: 3 },
	],
	[
		"as often without one: the one that lacks more",
		{ kits_in_service: 2, unmet_per_1000_uses: 3 },
		{ kits_in_service: 5, unmet_per_1000_uses: 3 },
	],
	["no kit at all is too few", { kits_in_service: 0, unmet_per_1000_uses: null }, {}],
	[
		"with kits enough, how often none is ready decides nothing",
		{ first_run_out: "2027-03-09", unmet_per_1000_uses: 0.1 },
		{ first_run_out: null, unmet_per_1000_uses: 0.9 },
	],
	["the earlier day", { first_run_out: "2027-03-02" }, { first_run_out: "2027-03-10" }],
	[
		"the earlier day before orders that are late",
		{ first_run_out: "2027-03-02" },
		{ first_run_out: "2027-03-10", orders_late: 9, problems: 9 },
	],
	["orders that are late", { orders_late: 2 }, { orders_late: 1, problems: 5 }],
	["more problems", { problems: 2 }, { problems: 1, advice: 9 }],
	["more advice", { advice: 2 }, { advice: 1 }],
	["by name where all is the same", { unit: "A" }, { unit: "B" }],
	["by path where the name is the same too", { path: "a.zip" }, { path: "b.zip" }],
])("%s", (_, worse, better) => {
	const [one, other] = [
		{ ...good, ...worse },
		{ ...good, ...better },
	];
	expect([other, one].sort(worstFirst)).toEqual([one, other]);
	expect([one, other].sort(worstFirst)).toEqual([one, other]);
	expect(worstFirst(one, one)).toBe(0);
});

test.each([
	[6, 5, 1],
	[5, 6, 0],
	[null, 5, undefined],
	[6, null, undefined],
])("of %j kits needed and %j in service so many are lacking: %j", (needed, inService, short) => {
	const row = { ...good, kits_needed: needed, kits_in_service: inService };
	expect(kitsShort(row)).toBe(short);
});
