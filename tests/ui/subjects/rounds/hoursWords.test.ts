import { expect, test } from "vitest";
import { hoursWords } from "../../../../src/ui/subjects/rounds/hoursWords.ts";

test("nobody stays near a fire that is not lit", () => {
	expect(hoursWords({ handsOn: 4.2, atFires: 0 })).toMatch(
		/people work on it for 4\.2 hours in all\.$/,
	);
	expect(hoursWords({ handsOn: 4.2, atFires: 5.04 })).toContain(
		"the fires for these rounds burn 5.1 hours",
	);
});
