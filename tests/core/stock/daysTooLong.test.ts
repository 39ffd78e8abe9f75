import { expect, test } from "vitest";
import { daysTooLong } from "../../../src/core/stock/daysTooLong.ts";
import { answerOf } from "../answerOf.ts";

test.each([
	["as long ago as is meant", { daysAgo: 31 }, null],
	["a day longer ago", { daysAgo: 32 }, 32],
	["nobody said when", { daysAgo: null }, null],
	["long ago, of what the plan does not use", { daysAgo: 400, isUsedUp: "no" }, null],
] as const)("counted %s", (_, of, days) => {
	expect(answerOf(daysTooLong, { ...daysTooLong.example.inputs, ...of })).toBe(days);
});
