import { expect, test } from "vitest";
import { always, once, setAside } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { setAsideOfSome } from "../../../src/core/counts/setAsideOfSome.ts";

test.each([
	// 1 − e^−0.2 = 0.18127; one: 0.16375, a share of 0.9033.
	[0.2, 0.95, 2],
	[0.2, 0.9, 1],
	// 1 − e^−1 = 0.63212; up to two: 0.55182 (0.873), up to three: 0.61313 (0.96996).
	[1, 0.95, 3],
	[1, 0.97, 4],
	[20, 0.95, 28],
])("mean %d, sure to %d: %d", (mean, level, kits) => {
	expect(setAsideOfSome(poisson(mean), level)).toBe(kits);
});

test("never below what is set aside with idle rounds counted in", () => {
	for (let mean = 0.05; mean < 6; mean += 0.05)
		expect(setAsideOfSome(poisson(mean), 0.95)).toBeGreaterThanOrEqual(
			setAside(poisson(mean), 0.95),
		);
});

test("one where nothing comes, or one comes at most", () => {
	expect(setAsideOfSome(always(0), 0.95)).toBe(1);
	expect(setAsideOfSome(once(0.01), 0.99)).toBe(1);
	expect(setAsideOfSome(always(5), 0.95)).toBe(5);
});

test.each([
	[0, 0.5, 1],
	[0, 0.51, 2],
	[3, 0.5, 3],
	[3, 0.75, 4],
])("from %d on, a share that is just reached is enough: %d", (first, level, kits) => {
	const chance = first === 0 ? [0.5, 0.25, 0.25] : [0.5, 0.25, 0.25, 0];
	expect(setAsideOfSome({ first, chance: Float64Array.from(chance) }, level)).toBe(kits);
});
