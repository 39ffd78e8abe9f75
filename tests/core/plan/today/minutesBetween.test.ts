import { expect, test } from "vitest";
import { minutesBetween } from "../../../../src/core/plan/today/minutesBetween.ts";
import { dateTime } from "../../../../src/core/values/dateTime.ts";

const at = (text: string) => dateTime().schema.parse(text);

test.each([
	["2027-03-01 23:30", "2027-03-02 00:10", 40],
	["2027-02-28 08:00", "2027-03-02 07:00", 2820],
	["2027-03-02 00:10", "2027-03-01 23:30", -40],
])("from %s to %s: %d", (one, other, minutes) => {
	expect(minutesBetween(at(one), at(other))).toBe(minutes);
});
