import { expect, test } from "vitest";
import { daysToChoose, dayToShow } from "../../../../src/core/plan/today/dayToShow.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const days = ["2027-03-01", "2027-03-02", "2027-03-03"];
const shown = (clock: string, changes: Record<string, string> = {}) =>
	dayToShow(clock, days, readWorkbook(smallUnit(changes)).tables);

const recorded = {
	"uses.csv": "at,kit,what,by,note\n2027-02-28 23:10,A,used,,",
};
const later = { "records.csv": "date,births,kits_used\n2027-03-02,5,1" };
const ordered = {
	"records.csv": "date,births,kits_used\n2027-02-28,5,1\n2027-02-10,5,1",
	"placed.csv": "ordered_on,item,packs\n2027-02-20,liquid,1",
};
test.each([
	["within the plan", "2027-03-02", {}, "2027-03-02", "now"],
	["on its first day, behind a later record", "2027-03-01", later, "2027-03-01", "now"],
	["on its last day", "2027-03-03", recorded, "2027-03-03", "now"],
	["after it", "2027-03-04", recorded, "2027-03-04", "over"],
	["before it", "2027-02-26", {}, "2027-02-26", "to_come"],
	[
		"before it, an old order after the register",
		"2027-02-26",
		ordered,
		"2027-03-01",
		"clock_behind",
	],
	["before it, the record of that day", "2027-02-28", recorded, "2027-02-28", "to_come"],
	["behind the record", "2027-02-27", recorded, "2027-03-01", "clock_behind"],
	[
		"behind a round",
		"2010-01-01",
		{ "rounds-done.csv": "date,start,kits\n2027-02-20,07:00,A" },
		"2027-03-01",
		"clock_behind",
	],
	[
		"behind the journal",
		"2010-01-01",
		{ "journal.csv": "day,item,lot,entry,quantity,note\n2027-02-20,liquid,L1,count,3," },
		"2027-03-01",
		"clock_behind",
	],
	[
		"behind the register",
		"2027-02-27",
		{ "records.csv": "date,births,kits_used\n2027-02-28,5,1" },
		"2027-03-01",
		"clock_behind",
	],
	[
		"behind an order",
		"2027-02-27",
		{ "placed.csv": "ordered_on,item,packs\n2027-02-28,liquid,1" },
		"2027-03-01",
		"clock_behind",
	],
] as const)("the clock %s", (_words, clock, changes, day, because) => {
	expect(shown(clock, changes)).toEqual({ day, because });
});

test("the evening before the plan can be chosen, and the clock's own day", () => {
	expect(daysToChoose("2027-03-02", days)).toEqual(["2027-02-28", ...days]);
	expect(daysToChoose("2027-03-09", days)).toEqual(["2027-02-28", ...days, "2027-03-09"]);
	expect(daysToChoose("2027-02-20", days)).toEqual(["2027-02-20", "2027-02-28", ...days]);
	expect(daysToChoose("2027-03-09", [])).toEqual(["2027-03-09"]);
});
