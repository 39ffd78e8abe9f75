import { expect, test } from "vitest";
import { farSafer } from "../../../src/core/counts/enoughOf100.ts";
import { answerOf } from "../answerOf.ts";

// "At most a fifth as often" as asked, as its formula says: 1 of 5, 5 of 25.
test.each([
	[95, 99, "yes"],
	[95, 98.9, "no"],
	[75, 95, "yes"],
] as const)(
	"asked for %d of 100, one that is enough on %d is far safer: %s",
	(asked, enough, is) => {
		expect(answerOf(farSafer, { asked, enough })).toBe(is);
	},
);
