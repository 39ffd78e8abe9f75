import { expect, test } from "vitest";
import { clockAfter, momentAt } from "../../../src/core/record/momentAt.ts";

test.each([
	[0, "2027-03-01", 0],
	[61, "2027-03-01", 61],
	[1440, "2027-03-02", 0],
	[3000, "2027-03-03", 120],
	[-10, "2027-02-28", 1430],
	[-1440, "2027-02-28", 0],
])("%d minutes after the midnight of 1 March are on %s", (minutes, date, clock) => {
	expect(momentAt("2027-03-01", minutes)).toEqual({ date, minutes: clock });
});

test.each([
	[1410, 70, 1510],
	[600, 599, 2039],
	[600, 600, 600],
	[600, 601, 601],
])("from %d the clock that reads %d is minute %d", (start, clock, minute) => {
	expect(clockAfter(start, clock)).toBe(minute);
});
