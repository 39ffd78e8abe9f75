import { expect, test } from "vitest";
import { doneBy } from "../../../src/core/kits/lapsedAtMidnight.ts";
import { roomPerDay } from "../../../src/core/kits/roomPerDay.ts";
import { expectWithin } from "../../expectWithin.ts";

const hands = { people: 2, workMinutes: 110, aloneMinutes: 20 };

test("two people, with 110 minutes of work on each kit, day and night", () => {
	const room = roomPerDay({ kind: "after_each_use", hands } as Parameters<typeof roomPerDay>[0]);
	expectWithin(room, (2 * 1440) / 110, 1e-12, "kits");
});

test.each([
	[1, 130],
	[2, 130],
	[3, 240],
	[5, 350],
])("%d kits of the night before are all ready again after %d minutes", (kits, minutes) => {
	expect(doneBy(hands, minutes)).toBeGreaterThanOrEqual(kits);
	expect(doneBy(hands, minutes - 1)).toBeLessThan(kits);
});
