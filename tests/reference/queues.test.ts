import { describe, expect, test } from "vitest";
import { poisson } from "../../src/core/counts/poisson.ts";
import { kitsInQueue, oneServiceLater } from "../../src/core/kits/kitsInQueue.ts";
import { expectWithin } from "../expectWithin.ts";

/** Mean number that wait, those worked on not counted. */
const waiting = (queue: Float64Array, people: number) =>
	queue.reduce((sum, chance, n) => sum + chance * Math.max(0, n - people), 0);

describe("one person: M/D/1", () => {
	/** Textbook formulas for 0, 1 and 2 in the system, e.g. Gross and Harris, Fundamentals of Queueing Theory (from memory). */
	test.each([0.1, 0.5, 0.573, 0.8, 0.95])("load %d: none, one, two in the system", (load) => {
		const queue = kitsInQueue(1, load);
		const free = 1 - load;
		expectWithin(queue[0], free, 1e-12, "chance");
		expectWithin(queue[1], free * Math.expm1(load), 1e-12, "chance");
		const two = free * (Math.exp(2 * load) - Math.exp(load) * (1 + load));
		expectWithin(queue[2], two, 1e-12, "chance");
	});

	/** Pollaczek and Khinchine with a fixed service time: ρ² ÷ (2(1 − ρ)) wait (from memory; textbook). */
	test.each([0.2, 0.5, 0.8, 0.9, 0.98])("load %d: mean number that waits", (load) => {
		const mean = load ** 2 / (2 * (1 - load));
		expectWithin(waiting(kitsInQueue(1, load), 1), mean, 1e-9 * mean, "kits");
	});
});

/**
 * Crommelin 1932 and Pollaczek: the mean that waits is Σ over l of E[(N − lc)+] ÷ l, N Poisson
 * with mean l·c·ρ, and nobody waits with chance exp(−Σ P(N > lc) ÷ l) (here as Spitzer's
 * identity of 1956, from memory). Summed apart from the program's way, which eliminates.
 */
describe("several people: M/D/c", () => {
	test.each([
		[1, 0.7],
		[2, 0.5],
		[2, 0.8],
		[3, 0.9],
		[5, 0.9],
		[10, 0.7],
	])("%d people, load %d", (people, load) => {
		let mean = 0;
		let some = 0;
		for (let l = 1; l < 4000; l++) {
			const { first, chance } = poisson(l * people * load);
			for (let i = 0; i < chance.length; i++) {
				const over = first + i - l * people;
				if (over <= 0) continue;
				mean += ((chance[i] as number) * over) / l;
				some += (chance[i] as number) / l;
			}
		}
		const queue = kitsInQueue(people, people * load);
		expectWithin(waiting(queue, people), mean, 1e-8 * mean, "kits");
		const noneWaits = queue.subarray(0, people + 1).reduce((sum, chance) => sum + chance, 0);
		expectWithin(noneWaits, Math.exp(-some), 1e-9, "chance");
	});

	/** Mean numbers waiting as tabulated for M/D/c (Seelen, Tijms and van Hoorn, Tables for Multi-Server Queues, 1985; from memory, three digits). */
	test.each([
		[2, 0.5, 0.177],
		[2, 0.8, 1.445],
	])("%d people, load %d: %d wait", (people, load, mean) => {
		expectWithin(waiting(kitsInQueue(people, people * load), people), mean, 5e-4, "kits");
	});

	test("as many people as anybody needs: Poisson, Palm's theorem", () => {
		const { first, chance } = poisson(3);
		const queue = kitsInQueue(60, 3);
		for (let n = 0; n < 20; n++) expectWithin(queue[n], chance[n - first] ?? 0, 1e-12, "chance");
	});

	test("a settled queue stays as it is", () => {
		const queue = kitsInQueue(2, 1.5);
		const later = oneServiceLater(queue, 2, 1.5);
		for (let n = 0; n < later.length; n++) expectWithin(later[n], queue[n] ?? 0, 1e-13, "chance");
	});
});

test("nothing comes: nothing waits", () => {
	expect([...kitsInQueue(1, 0)]).toEqual([1]);
});
