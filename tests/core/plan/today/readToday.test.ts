import { expect, test } from "vitest";
import { readToday } from "../../../../src/core/plan/today/readToday.ts";
import { smallUnit } from "../../smallUnit.ts";

const recorded = smallUnit({ "records.csv": "date,births,kits_used\n2027-02-20,5,1" });

test.each([
	["after the record", "2027-02-21", "2027-02-21"],
	["on its last day", "2027-02-20", "2027-02-20"],
	["behind it, so that it is wrong", "2027-02-19", undefined],
	["that nobody asked", undefined, undefined],
])("a clock %s", (_what, clock, today) => {
	expect(readToday(recorded, clock).today).toBe(today);
});
