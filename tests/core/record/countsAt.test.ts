import { expect, test } from "vitest";
import { countsAt } from "../../../src/core/record/countsAt.ts";

// record.md, "State of a kit": at equal times the unsafe one wins; of a day alone no time is known.
test.each([
	["unsafe, at a time", false, undefined, 600],
	["safe, at a time", true, undefined, 600],
	["unsafe, at midnight", false, undefined, 0],
	["unsafe, on a day", false, true, 1440],
	["safe, on a day", true, true, 0],
] as const)("%s", (_, isSafe, isDayOnly, minutes) => {
	const written = { date: "2027-03-01", minutes: minutes === 600 ? 600 : 0 };
	expect(countsAt(isDayOnly ? { ...written, isDayOnly } : written, isSafe)).toEqual({
		date: "2027-03-01",
		minutes,
	});
});
