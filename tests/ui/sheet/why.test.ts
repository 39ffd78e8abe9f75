import { describe, expect, test } from "vitest";
import {
	calculation,
	defaultFigure,
	derive,
	refusedFigure,
	typedFigure,
} from "../../../src/core/calculation.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { setAsideOf } from "../../../src/core/counts/setAsideOf.ts";
import { countTimes } from "../../../src/core/countTimes.ts";
import { problem } from "../../../src/core/problem.ts";
import { definition } from "../../../src/core/source.ts";
import { why } from "../../../src/ui/sheet/why.ts";

const place = { file: "births.csv", line: 4, column: "births" };
const area = calculation<{ a: number; b: number }, number>({
	key: "product",
	label: "Product",
	unit: "m²",
	formula: "a × b",
	source: definition,
	rounding: "None.",
	caution: "Mind the step.",
	inputs: { a: { label: "Length", unit: "m" }, b: { label: "Width", unit: "m" } },
	example: { inputs: { a: 2, b: 3 }, result: 6, within: 0 },
	compute: ({ a, b }) => a * b,
});

describe("why", () => {
	test("says formula, rounding, caution, source, and every input with value, unit and origin", () => {
		const said = why(
			derive(area, {
				a: typedFigure("A", "m", 1200, place),
				b: defaultFigure("B", "m", 2.5, { file: "unit.csv", line: null, column: "b" }),
			}),
		);
		expect(said).toMatchObject({
			value: "3\u202f000",
			formula: "a × b",
			rounding: "None.",
			caution: "Mind the step.",
			source: definition,
		});
		expect(said.ingredients).toMatchObject([
			{ label: "Length", unit: "m", value: "1\u202f200", place },
			{ label: "Width", unit: "m", value: "2.5", origin: "default; Settings of the unit" },
		]);
		expect(said.ingredients[0]?.origin).toBe("typed in: Your own figures of births, line 4");
	});

	test("says of what is set aside how often it is enough, beside what was asked, and of what follows from it", () => {
		// At most 2 of a mean of 1: 0.9197; at most 3: 0.98101.
		const count = derive(setAsideOf("rounds", "Rounds", "rounds"), {
			counts: typedFigure("Counts", "", poisson(1), place),
			confidence: typedFigure("Sure", "", 0.95, place),
		});
		const litres = derive(
			countTimes("l", "Litres", "L", { label: "Rounds", unit: "" }, { label: "Each", unit: "L" }),
			{
				count,
				each: typedFigure("Each", "L", 30, place),
			},
		);
		const enough = "Enough on 98.1 of 100 such days or plans; 95 were asked.";
		const less = (amount: number) =>
			`The next smaller there is, ${amount}, would be enough on 91.9.`;
		expect(why(count).promise).toBe(`${enough} ${less(2)}`);
		expect(why(litres).promise).toBe(`${enough} ${less(60)}`);
		expect(why(typedFigure("One", "m", 1, place)).promise).toBeUndefined();
	});

	test("a computed input can be asked in its turn", () => {
		const one = typedFigure("One", "m", 1, place);
		const inner = derive(area, { a: one, b: one });
		expect(why(derive(area, { a: inner, b: one })).ingredients[0]?.figure).toBe(inner);
	});

	test("without an answer there is a dash and the problem it waits for", () => {
		const wrong = problem(place, { code: "bad-cell", received: "x", allowed: "y", message: "No." });
		const bad = refusedFigure("Bad", "m", place, wrong);
		const said = why(derive(area, { a: bad, b: typedFigure("B", "m", 1, place) }));
		expect(said.value).toBe("–");
		expect(said.problems).toEqual([wrong]);
	});
});
