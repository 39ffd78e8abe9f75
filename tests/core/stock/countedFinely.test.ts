import { expect, test } from "vitest";
import type { Counts } from "../../../src/core/counts/counts.ts";
import { countingSteps, type Steps } from "../../../src/core/stock/commonStep.ts";
import { countedFinely } from "../../../src/core/stock/countedFinely.ts";

const ALL = Number.POSITIVE_INFINITY;

/** An amount that surely comes to so many of the first steps, of which only those looked at are told. */
function surely(of: number, first: Steps) {
	const asked: [number, number][] = [];
	const used = ({ size, most }: Steps): Counts => {
		asked.push([size / first.size, most]);
		const steps = Math.round((of * first.size) / size);
		return steps <= most
			? { first: steps, chance: Float64Array.of(1) }
			: { first: most, chance: new Float64Array(1) };
	};
	const found = countedFinely([0.001], 0.95, first, 2000, used);
	return { asked, setAside: found.setAside / first.size, most: found.steps.most };
}

/** Shared steps, of which a thousand are the most that is likely; use counted exactly in 0.001. */
const shared = () => countingSteps([0.001], 1000, 8);
const exact = () => countingSteps([1], 50_000, 8);

test.each([
	["among the first: no further", 2500, [3000]],
	["just among the first", 3000, [3000]],
	["beyond: four times as far", 3001, [3000, 12_000]],
	["and again", 12_001, [3000, 12_000, 48_000]],
	["until all are looked at", 48_001, [3000, 12_000, 48_000, ALL]],
])("in shared steps, what is enough is %s", (_what, of, looks) => {
	const { asked, setAside, most } = surely(of, shared());
	expect(asked).toEqual(looks.map((look) => [1, look]));
	expect([setAside, most]).toEqual([of + 5, looks.at(-1)]);
});

test.each([
	["among the first", 100_000, [100_000]],
	["beyond: all", 100_001, [100_000, ALL]],
])("counted exactly, what is enough is %s", (_what, of, looks) => {
	const { asked, setAside, most } = surely(of, exact());
	expect(asked).toEqual(looks.map((look) => [1, look]));
	expect([setAside, most]).toEqual([of, looks.at(-1)]);
});

test("where so few steps are set aside that those on the safe side weigh, finer ones are looked at", () => {
	const { asked, setAside } = surely(400, shared());
	expect(asked).toEqual([
		[1, 3000],
		[405 / 2000, 3000],
	]);
	expect(setAside).toBe((Math.round((400 * 2000) / 405) + 5) * (405 / 2000));
});

test("chances that add up to no number, a mistake of the program, are not looked for for ever", () => {
	const none = { first: 0, chance: Float64Array.of(Number.NaN) };
	expect(countedFinely([1], 0.95, exact(), 2000, () => none).used).toBe(none);
});
