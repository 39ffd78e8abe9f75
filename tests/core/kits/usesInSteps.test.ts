import { expect, test } from "vitest";
import type { RenewalStep } from "../../../src/core/kits/renewalSteps.ts";
import { UsesInSteps } from "../../../src/core/kits/usesInSteps.ts";
import { expectWithin } from "../../expectWithin.ts";

const stepOf = (uses: number): RenewalStep => ({
	uses,
	endsBy: 0,
	spreadBy: 0,
	target: 1,
	midnight: "none",
});

/** Tails of the Poisson distribution, from its closed form, in millionths: more than 1 at 0.004, 8.0; more than 2 at 0.04, 10.4; more than 6 at 1, 83.2; more than 7, 10.2; more than 8, 1.1. */
test.each([
	[0, 1],
	[0.004, 2],
	[0.04, 4],
	[1, 9],
])("%d uses: %d numbers are likely", (uses, numbers) => {
	const { all, likely } = new UsesInSteps(12).of(stepOf(uses));
	expect(all).toHaveLength(13);
	expect(likely).toHaveLength(numbers);
	expectWithin(
		likely.reduce((sum, chance) => sum + chance, 0),
		1,
		1e-12,
		"",
	);
	expect([...likely.slice(0, -1)]).toEqual([...all.slice(0, numbers - 1)]);
});

test("no more than there are kits", () => {
	const { all, likely } = new UsesInSteps(3).of(stepOf(9));
	expect([...likely]).toEqual([...all]);
	expect(all).toHaveLength(4);
});
