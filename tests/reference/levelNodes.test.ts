import { describe, expect, test } from "vitest";
import type { Counts } from "../../src/core/counts/counts.ts";
import { levelNodes } from "../../src/core/counts/levelNodes.ts";
import { mixedOver } from "../../src/core/counts/mixedOver.ts";
import { negativeBinomial } from "../../src/core/counts/negativeBinomial.ts";
import { poisson } from "../../src/core/counts/poisson.ts";
import { expectWithin } from "../expectWithin.ts";

const levels = [0.5, 0.8, 0.9, 0.95, 0.98, 0.99];

/** A quantile between whole numbers, so that a hair's breadth is not taken for a whole kit. */
function between({ first, chance }: Counts, level: number): number {
	let sum = 0;
	for (let i = 0; i < chance.length; i++) {
		const p = chance[i] as number;
		if (sum + p >= level) return first + i + (level - sum) / p;
		sum += p;
	}
	throw new Error("no such quantile");
}

/** Poisson counts over a Gamma level are negative binomial: known without any nodes. */
describe("Poisson counts mixed over the level's nodes", () => {
	test.each(
		[1, 3, 10, 50, 300].flatMap((shape) =>
			[0.005, 0.05, 0.3, 1, 3, 7, 14].map((variance) => [shape, shape * variance] as const),
		),
	)("shape %d, mean %d: every quantile within 1 in 100", (shape, mean) => {
		const nodes = levelNodes(shape, mean);
		const mixed = mixedOver(nodes, (factor) => poisson(mean * factor));
		const exact = negativeBinomial(shape, mean);
		for (const level of levels) {
			const wanted = between(exact, level);
			expectWithin(between(mixed, level), wanted, 0.01 * (1 + wanted), `at ${level}`);
		}
	});
});

test("a level that is well known, or known, has one node: the mean", () => {
	for (const [shape, mean] of [
		[Number.POSITIVE_INFINITY, 50],
		[1000, 9.9],
		[5, 0],
	] as const)
		expect(levelNodes(shape, mean)).toEqual([{ factor: 1, weight: 1 }]);
	const counts = poisson(3);
	expect(mixedOver(levelNodes(1000, 3), () => counts)).toBe(counts);
});
