import { expect, test } from "vitest";
import { firstBest } from "../../src/core/firstBest.ts";

interface Thing {
	readonly name: string;
	readonly most: number;
	/** Left out where it is no answer. */
	readonly value?: number;
}

function found(things: readonly Thing[]): { best: string | undefined; tried: string } {
	const tried: string[] = [];
	const best = firstBest(
		things,
		({ most }) => most,
		({ name, value }) => {
			tried.push(name);
			return value === undefined ? undefined : { row: name, value };
		},
	);
	return { best: best?.row, tried: tried.join("") };
}

test.each<[string, Thing[], string | undefined, string]>([
	["nothing", [], undefined, ""],
	["the highest value, not what might have been highest", [a(9, 3), b(5, 4), c(2, 1)], "b", "ab"],
	["an earlier one that might have won, and is lower", [a(5, 1), b(9, 4)], "b", "ba"],
	["what can no longer win is not tried", [a(1, 1), b(5, 4), c(3, 3)], "b", "b"],
	["of several with the same value the first, whenever it is tried", [a(4, 4), b(5, 4)], "a", "ba"],
	["a later one that can only be as high is not tried", [a(4, 4), b(4, 4), c(4, 4)], "a", "a"],
	["a later one that may be higher is", [a(4, 4), b(4.1, 4)], "a", "ba"],
	["what is no answer is passed over", [a(9), b(5, 4), c(9)], "b", "acb"],
	["none has an answer", [a(9), b(5)], undefined, "ab"],
])("%s", (_, things, best, tried) => {
	expect(found(things)).toEqual({ best, tried });
});

test("what a closer look lets win no more is not tried, and only what may still win is looked at closer", () => {
	const looked: string[] = [];
	const tried: string[] = [];
	const best = firstBest(
		[a(9, 4), b(8, 1), c(7, 4), { name: "d", most: 3, value: 3 }],
		({ most }) => most,
		({ name, value }) => {
			tried.push(name);
			return value === undefined ? undefined : { row: name, value };
		},
		({ name, value = 0 }) => {
			looked.push(name);
			return value + 0.5;
		},
	);
	expect([best?.row, tried.join(""), looked.join("")]).toEqual(["a", "ac", "bc"]);
});

test("a closer look that lets an earlier one be as high does not pass it over", () => {
	const best = firstBest(
		[a(4, 4), b(5, 4)],
		({ most }) => most,
		({ name, value = 0 }) => ({ row: name, value }),
		({ value = 0 }) => value,
	);
	expect(best?.row).toBe("a");
});

function a(most: number, value?: number): Thing {
	return { name: "a", most, ...(value !== undefined && { value }) };
}

function b(most: number, value?: number): Thing {
	return { ...a(most, value), name: "b" };
}

function c(most: number, value?: number): Thing {
	return { ...a(most, value), name: "c" };
}
