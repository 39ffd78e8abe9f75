import { expect, test } from "vitest";
import { canFollowEveryKit } from "../../../src/core/kits/everyKitsEnd.ts";

/** Kits that end on so many days do so in (kits + days − 1) over kits ways; to 3,100 each is followed. */
test.each([
	[14, 1, true],
	[14, 4, true], // 680
	[14, 5, true], // 3,060
	[14, 6, false], // 11,628
	[3, 25, true], // 2,925
	[3, 26, false], // 3,276
	[2, 78, true], // 3,081
	[2, 79, false], // 3,160
	[1, 3100, true],
	[1, 3101, false],
	[500, 8, false],
])("of %d kits that end on %d days each is followed: %s", (kits, ends, follows) => {
	expect(canFollowEveryKit(kits, ends)).toBe(follows);
});
