import { describe, expect, test } from "vitest";
import { laguerreNodes } from "../../src/core/counts/laguerreNodes.ts";
import { expectWithin } from "../expectWithin.ts";

/** Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, Table 25.9 (from memory). */
const published: readonly (readonly (readonly [number, number])[])[] = [
	[
		[0.585786437627, 0.853553390593],
		[3.414213562373, 0.146446609407],
	],
	[
		[0.415774556783, 0.711093009929],
		[2.294280360279, 0.278517733569],
		[6.289945082937, 0.0103892565016],
	],
	[
		[0.263560319718, 0.521755610583],
		[1.413403059107, 0.398666811083],
		[3.596425771041, 0.0759424496817],
		[7.085810005859, 0.00361175867992],
		[12.640800844276, 0.0000233699723858],
	],
];

test.each(published)("Gauss-Laguerre nodes and weights as printed", (...printed) => {
	const nodes = laguerreNodes(1, printed.length);
	printed.forEach(([node, weight], i) => {
		expectWithin(nodes[i]?.factor, node, 6e-13, "node"); // twelve printed decimals
		expectWithin(nodes[i]?.weight, weight, 6e-13, "weight");
	});
});

describe("a Gamma level of mean 1", () => {
	test.each(
		[0.3, 1, 2.5, 40, 1500, 1e5].flatMap((shape) => [1, 2, 7, 24].map((n) => [shape, n] as const)),
	)("of shape %d by %d nodes: every moment that n nodes can hold", (shape, count) => {
		const nodes = laguerreNodes(shape, count);
		expect(nodes).toHaveLength(count);
		let exact = 1;
		for (let power = 0; power < Math.min(2 * count, 12); power++) {
			const sum = nodes.reduce((all, { factor, weight }) => all + weight * factor ** power, 0);
			expectWithin(sum / exact, 1, 1e-10, "times");
			exact *= 1 + power / shape;
		}
		for (const { factor, weight } of nodes) {
			expect(factor).toBeGreaterThan(0);
			expect(weight).toBeGreaterThanOrEqual(0);
		}
	});
});

test("what has no nodes is a mistake of the program, and not looked for for ever", () => {
	expect(() => laguerreNodes(Number.NaN, 3)).toThrow("nodes were not found");
});
