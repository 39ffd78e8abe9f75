import { expect, test } from "vitest";
import type { RenewalStep } from "../../../src/core/kits/renewalSteps.ts";
import { type Chain, settle } from "../../../src/core/kits/settle.ts";
import { expectWithin } from "../../expectWithin.ts";

const step: RenewalStep = { uses: 0, endsBy: 0, spreadBy: 0, target: 0, midnight: "none" };

/** A chain that goes on by a rule, and how often it did. */
function chainOf(first: readonly number[], next: (chances: Float64Array) => number[]) {
	let chances = Float64Array.from(first);
	const chain: Chain & { days: number } = {
		lists: 1,
		days: 0,
		chances: () => chances.slice(),
		goOnFrom: (others) => {
			chances = others.slice();
		},
		go: () => {
			chances = Float64Array.from(next(chances));
			chain.days++;
			return chances;
		},
	};
	return chain;
}

test("what changes by so little a day that 40 stretches would not settle it is found", () => {
	// Of two states one goes over at 2 of 1,000, the other at 1 of 1,000: one third and two thirds.
	const chain = chainOf([1, 0], ([a = 0, b = 0]) => [a * 0.998 + b * 0.001, a * 0.002 + b * 0.999]);
	settle(chain, [step], 7);
	expectWithin(chain.chances()[0] as number, 1 / 3, 1e-6, "");
	expect(chain.days).toBeLessThan(7 * 10);
});

test("where it has settled it stays", () => {
	const chain = chainOf([0.25, 0.75], (chances) => [...chances]);
	settle(chain, [step, step], 3);
	expect(chain.days).toBe(6);
	expect([...chain.chances()]).toEqual([0.25, 0.75]);
});

test("what goes on changing, whatever is guessed, ends before the last stretch", () => {
	let turn = 0;
	const chain = chainOf([1, 0, 0], () => [0, 1, 2].map((i) => (i === turn % 3 ? 1 : 0)));
	const { go } = chain;
	chain.go = (of) => {
		turn++;
		return go(of);
	};
	settle(chain, [step], 1);
	expect(chain.days).toBeLessThan(40);
});

test("how much changes is told of a list, on average", () => {
	const away = [0.008, 0.004, 0.002, 0.001];
	const days = (lists: number) => {
		const chain = { ...chainOf([0], () => [away[goes++] as number]), lists };
		let goes = 0;
		chain.go = () => {
			last = [last[0] as number, away[goes++] as number];
			return Float64Array.of(0);
		};
		let last = [0, 0.016];
		chain.chances = () => Float64Array.from(last);
		settle(chain, [step], 1);
		return goes;
	};
	// From one to the next it changes by 0.008, 0.004, 0.002 …; less than 5 of 1,000 is settled.
	expect(days(1)).toBe(2);
	expect(days(2)).toBe(1);
});
