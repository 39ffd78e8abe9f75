import { expect, test } from "vitest";
import { distinct, nowhere, problem } from "../../../src/core/problem.ts";
import { marksReader } from "../../../src/core/record/marksReader.ts";
import { clockAfter, momentAt } from "../../../src/core/record/momentAt.ts";
import { missingSorts } from "../../../src/core/rounds/stepWords.ts";
import { percentForms } from "../../../src/core/values/numberForms.ts";

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

test("marks are read whatever stands between and before them", () => {
	const read = marksReader(["K1", "Kit 2", "K3"]);
	expect(read("K1 Kit 2, K3")).toEqual({ marks: ["K1", "Kit 2", "K3"], unknown: [] });
	expect(read(" ,; k1;;K9 ")).toEqual({ marks: ["K1"], unknown: ["K9"] });
	expect(read("K12")).toEqual({ marks: [], unknown: ["K12"] });
});

test("a share of 100 may have its sign behind it, with spaces", () => {
	for (const text of ["12,5%", "12,5 %", "12,5 % "]) expect(percentForms(text).comma).toBe("12.5");
});

test("what no step is about is told where a list has any word that is known", () => {
	expect(missingSorts(["Wash in soapy water", "Soak", "Dry in the air"])).toEqual(["rinse"]);
	expect(missingSorts(["zzz"])).toEqual([]);
});

test("problems that say the same at another place are two", () => {
	const words = { received: "", allowed: "", message: "" };
	const [one, other] = [
		problem({ ...nowhere, file: "b" }, { ...words, code: "a" }),
		problem({ ...nowhere, file: "" }, { ...words, code: "ab" }),
	];
	expect(distinct([one, other, one])).toEqual([one, other]);
});
