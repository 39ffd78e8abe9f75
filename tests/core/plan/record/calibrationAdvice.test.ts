import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { unitWith } from "../../smallUnit.ts";

/** A February of which every day was planned for so many births, and had so many. */
function advised(setAside: number, births: readonly number[]) {
	const days = births.map((_, at) => `2027-02-${String(at + 1).padStart(2, "0")}`);
	const workbook = unitWith(
		{ plan_confidence: 0.95 },
		{
			"records.csv": [
				"date,births,kits_used",
				...days.map((day, at) => `${day},${births[at]},`),
			].join("\n"),
			"past-plans.csv": [
				"date,measure_of,expected,set_aside",
				...days.map((day) => `${day},births,6,${setAside}`),
			].join("\n"),
		},
	);
	return plan(workbook)
		.problems.filter(({ file }) => file === "past-plans.csv")
		.map(({ code, weight, message }) => [code, weight, message]);
}

const times = (count: number, births: number) => Array.from({ length: count }, () => births);

test("the plan says in one sentence when it was clearly too small", () => {
	const [[code, weight, message] = []] = advised(9, [...times(18, 9), ...times(10, 10)]);
	expect([code, weight]).toEqual(["plan-too-little", "advice"]);
	// 18 of 28, Clopper and Pearson at 95 of 100: 0.441 to 0.814.
	expect(message).toContain(
		"On 18 of 28 past days the births prepared for were enough (44 to 81 of 100)",
	);
});

test("a day or two is no proof, and nothing is said", () => {
	expect(advised(9, [...times(26, 9), ...times(2, 10)])).toEqual([]);
	expect(advised(9, times(3, 20).slice(0, 1))).toEqual([]);
	expect(advised(9, [])).toEqual([]);
});
