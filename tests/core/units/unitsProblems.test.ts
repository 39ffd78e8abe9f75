import { expect, test } from "vitest";
import type { Problem } from "../../../src/core/problem.ts";
import { failedUnit, firstDaysDiffer, namedTwice } from "../../../src/core/units/unitsProblems.ts";
import { wholeProblems } from "../wholeProblems.ts";

test.each<[Problem, Partial<Problem>]>([
	[namedTwice("Hill", "b.zip"), { code: "unit-named-twice", weight: "advice", received: "Hill" }],
	[
		firstDaysDiffer("2027-03-01", "2027-03-08"),
		{ code: "first-days-differ", weight: "advice", received: "2027-03-01, 2027-03-08" },
	],
	[failedUnit(new Error("torn")), { code: "program-error", weight: "error", received: "torn" }],
	[failedUnit("torn"), { code: "program-error", weight: "error", received: "torn" }],
])("%o", (found, expected) => {
	expect(wholeProblems([found])).toMatchObject([expected]);
});
