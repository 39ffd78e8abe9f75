import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { birthsCalibration } from "../../../../src/core/plan/record/birthsCalibration.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

/** A February of which every day was planned for so many births, and had so many; "" where nobody wrote them down. */
function februaryOf(
	setAside: number,
	births: readonly (number | "")[],
	confidence: number | string,
) {
	const days = births.map((_, at) => `2027-02-${String(at + 1).padStart(2, "0")}`);
	return unitWith(
		{ plan_confidence: confidence },
		{
			"records.csv": [
				"date,births,kits_used",
				...days.map((day, at) => `${day},${births[at]},`),
			].join("\n"),
			"past-plans.csv": [
				"date,measure_of,expected,set_aside",
				...["2027-01-29", ...days].map((day) => `${day},births,6,${setAside}`),
			].join("\n"),
		},
	);
}

function advised(setAside: number, births: readonly (number | "")[], confidence = 0.95) {
	return plan(februaryOf(setAside, births, confidence))
		.problems.filter(({ file }) => file === "past-plans.csv")
		.map(({ column, code, weight, received, allowed, message }) => [
			[column, code, weight, received, allowed],
			message,
		]);
}

const times = <T>(count: number, births: T) => Array.from({ length: count }, () => births);

test("the plan says in one sentence when it was clearly too small", () => {
	const [[said, message] = []] = advised(9, [...times(18, 9), ...times(10, 10)]);
	expect(said).toEqual([
		"set_aside",
		"plan-too-little",
		"advice",
		"18 of 28 days",
		"95 of 100 days",
	]);
	// 18 of 28, Clopper and Pearson at 95 of 100: 0.4407 to 0.8136.
	expect(message).toContain(
		"On 18 of 28 past days the births prepared for were enough (44 to 81.3 of 100)",
	);
});

test("the interval that is told is below what is asked, and what is asked is told as it was typed", () => {
	// 18 of 22, Clopper and Pearson at 95 of 100: 0.5972 to 0.9481, and 0.95 is asked.
	const [[, message] = []] = advised(9, [...times(18, 9), ...times(4, 10)]);
	expect(message).toContain("(59.7 to 94.8 of 100), and the plan asks for 95 of 100");
	const [[said, other] = []] = advised(9, [...times(18, 9), ...times(4, 10)], 0.975);
	expect(said).toContain("97.5 of 100 days");
	expect(other).toContain("the plan asks for 97.5 of 100");
});

test("a day of which no births are written down says nothing of the plan", () => {
	const [[said] = []] = advised(9, [...times(8, 9), ...times(10, 10), ...times(10, "" as const)]);
	expect(said).toContain("8 of 18 days");
});

test("and when it was clearly larger than it need be", () => {
	// One less was enough on each of 28 days, Clopper and Pearson: at least 0.877.
	const [[said, message] = []] = advised(9, times(28, 8), 0.8);
	expect(said).toEqual(["set_aside", "plan-too-much", "advice", "28 of 28 days", "80 of 100 days"]);
	expect(message).toContain("more often than the 80 of 100 days that the plan asks for");
	expect(advised(9, times(28, 9), 0.8)).toEqual([]);
});

test("a day or two is no proof, and nothing is said", () => {
	expect(advised(9, [...times(26, 9), ...times(2, 10)])).toEqual([]);
	expect(advised(9, times(3, 20).slice(0, 1))).toEqual([]);
	expect(advised(9, [])).toEqual([]);
});

test("without a confidence that can be read nothing is said", () => {
	const found = (confidence: number | string) =>
		birthsCalibration(readWorkbook(februaryOf(9, times(28, 9), confidence)));
	expect(found("very")).toBeUndefined();
	expect(found(0.9)).toMatchObject({ days: 28, enough: 28, asked: 0.9, verdict: "as_asked" });
});
