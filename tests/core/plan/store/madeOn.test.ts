import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { smallUnit } from "../../smallUnit.ts";

// The small unit's plan begins on 2027-03-01.
const foundIn = (lot: string, journal?: string) =>
	plan(
		smallUnit({
			"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
				${lot}`,
			...(journal ? { "journal.csv": `day,item,lot,entry,quantity,note\n${journal}` } : {}),
		}),
	)
		.problems.filter(({ code }) => code.startsWith("made-"))
		.map(({ code, weight, line, column }) => [code, weight, line, column].join(" "));

test.each([
	["on the first day", "liquid,L,1,2027-03-01,,,", []],
	["in a year to come", "liquid,L,1,2028-02-01,,,", ["made-in-future error 2 made_on"]],
	["a day after the plan begins", "liquid,L,1,2027-03-02,,,", ["made-in-future error 2 made_on"]],
	["of any item", "gauze squares,G,1,2027-03-02,,,", ["made-in-future error 2 made_on"]],
	["on the day it came", "liquid,L,1,2027-02-01,2027-02-01,,", []],
	["after it came", "liquid,L,1,2027-02-02,2027-02-01,,", ["made-after-received error 2 made_on"]],
	["of one that is still to come", "liquid,L,1,2027-03-02,,2027-03-05,", []],
	[
		"of one that was announced and has come",
		"liquid,L,1,2027-03-02,2027-03-05,2027-03-05,",
		["made-in-future error 2 made_on"],
	],
])("made %s", (_what, lot, problems) => {
	expect(foundIn(lot)).toEqual(problems);
});

test("made after the plan begins, of one that an entry of the journal has brought in", () => {
	expect(foundIn("liquid,L,0,2027-03-02,,2027-03-05,", "2027-03-01,liquid,L,receipt,5,")).toEqual([
		"made-in-future error 2 made_on",
	]);
});
