import { isDeepStrictEqual } from "node:util";
import { expect } from "vitest";

/** As `toEqual`, which takes many times as long over all that a plan says, and is only needed to show a difference. */
export function expectEqual(actual: unknown, expected: unknown): void {
	if (!isDeepStrictEqual(actual, expected)) expect(actual).toEqual(expected);
}
