import { expect, test } from "vitest";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { kitsInQueue, oneServiceLater } from "../../../src/core/kits/kitsInQueue.ts";
import { expectWithin } from "../../expectWithin.ts";

/**
 * That its numbers are right is held by published queues; here, how far they go: those that come at
 * most, the people, and the tail, which for one person and 0.5 shrinks 3.51 times with each kit.
 */
test.each([
	[1, 0, 1],
	[1, 0.5, 14 + 1 + 28 + 1],
	[2, 1, 49],
	[1, 0.95, 359],
	// Three at work and little to do: each kit more is 63 times as rare.
	[3, 0.2, 24],
])(
	"%d at work, %d come in the time of one: so many numbers are followed",
	(people, come, numbers) => {
		const kits = kitsInQueue(people, come);
		expect(kits).toHaveLength(numbers);
		expectWithin(
			kits.reduce((sum, chance) => sum + chance, 0),
			1,
			1e-12,
			"chance",
		);
	},
);

test.each([
	["one at work of three, and none comes", 1, [0, 0, 0, 1], [0, 0, 1]],
	["two of three", 2, [0, 0, 0, 1], [0, 1]],
	["more than there are", 9, [0.25, 0.25, 0.5], [1]],
	["from none to two, one at work", 1, [0.25, 0.25, 0.5], [0.5, 0.5]],
	["what hardly ever is is not followed on", 1, [0.5, 0.5, 0, 1e-16], [1]],
])("a service time later: %s", (_what, people, before, after) => {
	expect([...oneServiceLater(Float64Array.from(before), people, 0)]).toEqual(after);
});

test("those that came are added", () => {
	const later = oneServiceLater(Float64Array.of(0, 0.5, 0.5), 1, 0.5);
	const p = (k: number) => (Math.exp(-0.5) * 0.5 ** k) / (k < 2 ? 1 : k === 2 ? 2 : 6);
	for (let n = 0; n < 4; n++)
		expectWithin(later[n], 0.5 * p(n) + (n > 0 ? 0.5 * p(n - 1) : 0), 1e-12, "chance");
});

test("where hardly anybody ever waits they are as many as come in the time of one: Poisson (Palm)", () => {
	const [people, come] = [200, 80];
	const { first, chance } = poisson(come);
	expect(first).toBeGreaterThan(0);
	for (const kits of [kitsInQueue(people, come), oneServiceLater(Float64Array.of(1), people, come)])
		chance.forEach((p, i) => {
			expectWithin(kits[first + i] ?? 0, p, 1e-12, "chance");
		});
});
