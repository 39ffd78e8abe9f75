import { expect, test } from "vitest";
import { broken } from "./broken.ts";
import { compiled } from "./modules.ts";
import { brokenBy, noted, noting, withMutant } from "./switches.ts";

const program = "exports.sum = (a, b) => a + b; exports.isMore = (a, b) => a > b;";

interface Program {
	sum(a: number, b: number): number;
	isMore(a: number, b: number): boolean;
}

const { files, mutants } = await broken([{ name: "sum.js", mutate: true, content: program }]);
const text = files[0]?.content ?? "";
const minus = mutants.find(({ replacement }) => replacement === "a - b")?.id ?? "";

function run(script: string): Program {
	const made = {} as Program;
	compiled(script, "sum.js")(made, () => undefined, {});
	return made;
}

test("with a mutant in place the rest of the program is whole", () => {
	const { sum, isMore } = run(brokenBy(minus, text));
	withMutant(minus, () => expect([sum(5, 3), isMore(5, 3)]).toEqual([2, true]));
	expect([sum(5, 3), isMore(5, 3)]).toEqual([8, true]);
});

test("one that nobody knows breaks nothing", () => {
	const { sum, isMore } = run(brokenBy("none", text));
	withMutant("none", () => expect([sum(5, 3), isMore(3, 5)]).toEqual([8, false]));
});

test("a test comes by the mutants of what it calls, and by no others", () => {
	const { sum, isMore } = run(noting(text));
	const [ofSum, ofBoth] = [
		noted(mutants.length, () => sum(5, 3)),
		noted(mutants.length, () => [sum(5, 3), isMore(5, 3)]),
	];
	const met = (of: Uint8Array) => mutants.filter(({ id }) => of[Number(id)] === 1);
	expect(met(ofSum).map(({ replacement }) => replacement)).toContain("a - b");
	expect(met(ofSum).map(({ replacement }) => replacement)).not.toContain("a >= b");
	expect(met(ofBoth).map(({ replacement }) => replacement)).toContain("a >= b");
});

test("a loop that comes by a mutant for ever is ended", () => {
	const { sum } = run(brokenBy(minus, text));
	expect(() =>
		withMutant(minus, () => {
			for (;;) sum(1, 1);
		}),
	).toThrow(/limit/);
});
