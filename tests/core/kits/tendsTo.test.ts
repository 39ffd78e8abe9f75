import { expect, test } from "vitest";
import { tendsTo } from "../../../src/core/kits/tendsTo.ts";
import { expectWithin } from "../../expectWithin.ts";

const LIMIT = [0.5, 0.3, 0.2, 0];

/** Lists that tend to the limit, each part of the rest by its own factor. */
function lists(count: number, parts: readonly { part: readonly number[]; factor: number }[]) {
	return Array.from({ length: count }, (_, k) =>
		Float64Array.from(LIMIT, (end, i) =>
			parts.reduce((sum, { part, factor }) => sum + (part[i] as number) * factor ** k, end),
		),
	);
}

// As many parts as there are changes less one are taken away exactly (A. Sidi, Vector Extrapolation Methods, from memory).
test.each([
	[3, [{ part: [0.1, -0.1, 0, 0], factor: 0.99 }]],
	[3, [{ part: [0.1, -0.1, 0, 0], factor: -0.95 }]],
	[
		4,
		[
			{ part: [0.1, -0.1, 0, 0], factor: 0.9 },
			{ part: [0, 0.05, -0.2, 0.15], factor: 0.5 },
		],
	],
])("%d lists whose rest goes by %j: the limit itself", (count, parts) => {
	tendsTo(lists(count, parts)).forEach((chance, i) => {
		expectWithin(chance, LIMIT[i] as number, 1e-6, "");
	});
});

test("lists that go round and shrink: the middle of their circle", () => {
	const turn = (k: number) => 0.98 ** k * 0.1 * Math.cos((2 * Math.PI * k) / 7);
	const along = (k: number) => 0.98 ** k * 0.1 * Math.sin((2 * Math.PI * k) / 7);
	const round = [0, 1, 2, 3].map((k) => Float64Array.of(0.4 + turn(k), 0.4 + along(k)));
	for (const chance of tendsTo(round)) expectWithin(chance, 0.4, 1e-6, "");
});

test("what does not change is where it tends to", () => {
	const all = [LIMIT, LIMIT, LIMIT].map((list) => Float64Array.from(list));
	tendsTo(all).forEach((chance, i) => {
		expectWithin(chance, LIMIT[i] as number, 1e-15, "");
	});
	expect(tendsTo(all)).toHaveLength(4);
});
