import { expect, test } from "vitest";
import type { MethodsOfKits } from "../../../src/core/methods/methodsOfKits.ts";
import {
	isDoneFor,
	kitsOfLoad,
	type Loads,
	loadMethodsOf,
	loadsByMethod,
	loadsOfStep,
} from "../../../src/core/rounds/loads.ts";

const loads: Loads = [
	{ method: "chlorine", kits: 3, ofKinds: [true, false] },
	{ method: "boiling", kits: 2 },
];
const kind = (...methods: MethodsOfKits["methods"]): MethodsOfKits => ({ methods, pieces: [] });

test.each([
	["chlorine", 7, 3],
	["chlorine", 6, 2],
	["boiling", 7, 4],
	["steam", 7, 0],
	[null, 7, 7],
	[undefined, 0, 0],
])("a step of %s with %d kits belongs to %d loads", (method, kits, count) => {
	expect(loadsOfStep(loads, kits, method)).toBe(count);
});

test("a step is done for its own method; one of none for all", () => {
	const [soak] = loads;
	if (!soak) throw new Error("no load");
	const done = ["chlorine", "boiling", null, undefined].map((method) => isDoneFor(soak, method));
	expect(done).toEqual([true, false, true, true]);
});

test("kits go by a method unless their kind does not", () => {
	expect(loads.map((load) => kitsOfLoad(load, [2, 5]))).toEqual([2, 7]);
	expect(kitsOfLoad({ method: "steam", kits: 1, ofKinds: [false, true] }, [2, 5])).toBe(5);
	expect(kitsOfLoad({ method: "steam", kits: 1, ofKinds: [true] }, [2, 5])).toBe(7);
});

test("each method that some kind goes by has its loads; of which kinds is said where not of all", () => {
	const kinds = [kind("boiling", "single_use"), kind("chlorine", "boiling")];
	expect(loadMethodsOf(kinds)).toEqual(["chlorine", "boiling"]);
	expect(loadMethodsOf([kind("single_use")])).toEqual([]);
	expect(loadsByMethod.compute({ kinds, sizes: [3, 2] })).toEqual([
		{ method: "chlorine", kits: 3, ofKinds: [false, true] },
		{ method: "boiling", kits: 2 },
	]);
});
