import { describe, expect, test } from "vitest";
import { poisson } from "../../src/core/counts/poisson.ts";
import { soaks } from "../../src/core/rounds/loads.ts";
import { useSetAside } from "../../src/core/stock/useSetAside.ts";
import { answerOf } from "../core/answerOf.ts";

const LEVELS = [0.8, 0.95, 0.98, 0.99];

/**
 * Exact use of rounds that run and kits in them: how likely each pair of rounds and kits
 * is, and then every pair's own amount in order. No amount is rounded on the way.
 */
function exactUse(means: readonly number[], perRound: number, perKit: number) {
	const most = Math.ceil(means.reduce((sum, m) => sum + m, 0) * 2 + 20);
	let pairs: Map<number, Float64Array> = new Map([[0, new Float64Array(most + 1).fill(0, 1)]]);
	(pairs.get(0) as Float64Array)[0] = 1;
	for (const m of means) {
		const { first, chance } = poisson(m);
		const next = new Map<number, Float64Array>();
		const rowOf = (rounds: number) => {
			const row = next.get(rounds) ?? new Float64Array(most + 1);
			next.set(rounds, row);
			return row;
		};
		for (const [rounds, row] of pairs)
			for (let kits = 0; kits <= most; kits++) {
				const p = row[kits] as number;
				if (p < 1e-14) continue;
				for (let k = 0; k < chance.length && kits + first + k <= most; k++) {
					const to = rowOf(rounds + (first + k > 0 ? 1 : 0));
					to[kits + first + k] = (to[kits + first + k] as number) + p * (chance[k] as number);
				}
			}
		pairs = next;
	}
	return [...pairs]
		.flatMap(([rounds, row]) =>
			Array.from(row, (p, kits) => ({ amount: rounds * perRound + kits * perKit, p })),
		)
		.sort((one, other) => one.amount - other.amount);
}

function quantile(amounts: ReturnType<typeof exactUse>, level: number): number {
	let sum = 0;
	for (const { amount, p } of amounts) {
		sum += p;
		if (sum >= level) return amount;
	}
	throw new Error("no such amount");
}

describe("use over long horizons, of rates without a common measure", () => {
	test.each([
		[90, 0.333333, 0.271829],
		[180, 1.000001, 0.0137],
		[366, 0.001237, 0.0199],
		[366, 2.718283, 0.000003],
	])(
		"%d days, %d a round and %d a kit: at most 1 in 100 above the exact quantile, never below",
		(days, perRound, perKit) => {
			const kits = [0.05, 0.1];
			const amounts = exactUse(new Array(days).fill(kits).flat(), perRound, perKit);
			const day = { kind: "in_rounds", starts: [480, 1200], kits, byKind: [kits] } as const;
			for (const confidence of LEVELS) {
				const exact = quantile(amounts, confidence);
				const found = answerOf(useSetAside, {
					rates: { perDay: 0, perRound, perLoad: [0], perKit: [perKit], perDescale: 0 },
					days: new Array(days).fill(day),
					loads: soaks(3),
					descaleEvery: 0,
					confidence,
				});
				expect(found).toBeGreaterThanOrEqual(exact * (1 - 1e-9));
				expect(found).toBeLessThanOrEqual(exact * 1.01);
			}
		},
		60_000,
	);
});
