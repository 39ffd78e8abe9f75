import { test } from "vitest";
import { chanceAtLeast } from "../../../src/core/counts/poisson.ts";
import { unmetInQueues } from "../../../src/core/kits/unmetInQueues.ts";
import { expectWithin } from "../../expectWithin.ts";

const moment = (uses: number, queue: readonly number[], alone: number) => ({
	uses,
	away: { minute: 0, queue: Float64Array.from(queue), alone },
});

test("the uses at all moments at which as many or more are away, however long the one queue and the other", () => {
	const unmet = unmetInQueues([moment(2, [0.5, 0.5], 0), moment(3, [0.25, 0, 0.25, 0.5], 0)], 1);
	const wanted = [5, 1 + 2.25, 2.25, 1.5, 0];
	for (const [kits, uses] of wanted.entries()) expectWithin(unmet(kits), uses, 1e-12, "uses");
});

test("where so many are left alone that none at all hardly ever is", () => {
	const unmet = unmetInQueues([moment(1, [1], 90)], 1);
	for (const kits of [0, 60, 90, 120])
		expectWithin(unmet(kits), chanceAtLeast(kits, 90), 1e-11, "uses");
});
