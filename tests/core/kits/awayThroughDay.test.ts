import { expect, test } from "vitest";
import { awayThroughDay } from "../../../src/core/kits/awayThroughDay.ts";
import { DayClock, flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Nobody could tell it from an even day, but it is followed step by step. */
const hardlyUneven = flatDay.map((share, hour) => share * (hour % 2 ? 1 + 1e-12 : 1 - 1e-12));

test.each([
	["one person, hardly busy", 2, { people: 1, workMinutes: 60, aloneMinutes: 0 }],
	["one person, nearly always busy", 22, { people: 1, workMinutes: 60, aloneMinutes: 25 }],
	[
		"two people, work that no day is a multiple of",
		80,
		{ people: 2, workMinutes: 31.7, aloneMinutes: 600 },
	],
	["work of moments", 500, { people: 3, workMinutes: 0.2, aloneMinutes: 90 }],
])("where kits come evenly every moment is as if followed step by step: %s", (_, perDay, hands) => {
	const even = awayThroughDay(new DayClock([perDay], flatDay), hands);
	const followed = awayThroughDay(new DayClock([perDay], hardlyUneven), hands);
	expect(even.map(({ minute }) => minute)).toEqual(followed.map(({ minute }) => minute));
	expect(new Set(even.map(({ queue }) => queue)).size).toBe(1);
	for (const [i, { queue, alone }] of even.entries()) {
		const step = followed[i] as (typeof followed)[number];
		expectWithin(alone, step.alone, 1e-9, "kits");
		for (let n = 0; n < Math.max(queue.length, step.queue.length); n++)
			expectWithin(queue[n] ?? 0, step.queue[n] ?? 0, 1e-10, "chance");
	}
});
