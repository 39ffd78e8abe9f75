import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { smallUnit } from "../../smallUnit.ts";
import { planOfStore, type Store } from "../oneItem.ts";

const entry = (lot: string) => `2027-02-03,soap,${lot},issue,2,`;
const said = (store: Store) =>
	planOfStore(store).problems.filter(
		({ file, line }) => ["lots.csv", "journal.csv"].includes(file) && line !== null,
	);

describe("what cannot be right about lots and journal", () => {
	test.each<[string, Store, string, string, string]>([
		[
			"an entry for a lot that is not listed",
			{ lots: ["S1 5 - - - -"], journal: [entry("S1"), entry("S9")] },
			"unknown-lot",
			"journal.csv",
			"lot",
		],
		[
			"an entry for a lot of another item",
			{
				journal: [entry("S1"), entry("L1")],
				files: {
					"lots.csv":
						"item,lot,quantity,made_on,received_on,arrives_on,expires_on\nsoap,S1,5,,,,\nliquid,L1,5000,,2027-02-20,,",
				},
			},
			"unknown-lot",
			"journal.csv",
			"lot",
		],
		[
			"a lot that expires before it came",
			{ lots: ["S0 5 - - - -", "S1 5 - 2027-02-01 - 2027-01-31"] },
			"expires-before-received",
			"lots.csv",
			"expires_on",
		],
		[
			"a lot that expires before it was made",
			{ lots: ["S0 5 - - - -", "S1 5 2027-02-01 - - 2027-01-31"] },
			"expires-before-received",
			"lots.csv",
			"expires_on",
		],
		[
			"a lot that expires before it arrives",
			{ lots: ["S0 5 - - - -", "S1 5 - - 2027-03-09 2027-03-08"] },
			"expires-before-received",
			"lots.csv",
			"expires_on",
		],
		[
			"a lot that expires before it came, later than it was to arrive",
			{ lots: ["S0 5 - - - -", "S1 5 - 2027-02-20 2027-02-10 2027-02-15"] },
			"expires-before-received",
			"lots.csv",
			"expires_on",
		],
		[
			"a lot of an item that is not listed",
			{
				files: {
					"lots.csv":
						"item,lot,quantity,made_on,received_on,arrives_on,expires_on\nsoap,S1,5,,,,\nsop,S1,5,,,,",
				},
			},
			"unknown-item",
			"lots.csv",
			"item",
		],
	])("%s", (_what, store, code, file, column) => {
		expect(said(store)).toMatchObject([{ code, file, line: 3, column }]);
	});

	test.each<[string, Store]>([
		["a lot that expires the day it came", { lots: ["S1 5 2027-01-31 2027-02-01 - 2027-02-01"] }],
		[
			"a lot that came before its day and expires before that day",
			{ lots: ["S1 5 - 2027-02-27 2027-03-09 2027-03-08"] },
		],
		["a lot without dates", { lots: ["S1 5 - - - -"] }],
		["a lot due on the first day", { lots: ["S1 5 - - 2027-03-01 -"] }],
		["entries for lots that are listed", { lots: ["S1 5 - - - -"], journal: [entry("S1")] }],
		["no journal", {}],
		["lots without a list of items", { lots: ["S1 5 - - - -"], files: { "items.csv": null } }],
	])("nothing is said of %s", (_what, store) => {
		expect(said(store)).toEqual([]);
	});
});

test("one made after it came expires before the later of the two days", () => {
	const found = said({ lots: ["S1 5 2027-02-05 2027-02-01 - 2027-02-03"] });
	expect(found.map(({ code }) => code).sort()).toEqual([
		"expires-before-received",
		"made-after-received",
	]);
});

// calculations 5: a reading flags; one of a lot that nobody lists flagged nothing, without a word.
test.each([
	["liquid,L1", []],
	["liquid,L9", ["advice unknown-lot strength-readings.csv 3 lot"]],
	["powder,L1", ["advice unknown-lot strength-readings.csv 3 lot"]],
])("a reading of %s", (lot, expected) => {
	const readings = `item,lot,read_on,strength_pct,method,note\nliquid,L1,2027-02-20,3.4,titration,\n${lot},2027-02-27,3.3,titration,`;
	const found = plan(smallUnit({ "strength-readings.csv": readings })).problems;
	expect(
		found
			.filter(({ file }) => file === "strength-readings.csv")
			.map(({ weight, code, file, line, column }) => [weight, code, file, line, column].join(" ")),
	).toEqual(expected);
});
