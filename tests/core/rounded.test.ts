import { expect, test } from "vitest";
import { rounded } from "../../src/core/rounded.ts";

test.each([
	["up, where it must be enough", { decimals: 1, rounds: "up" as const }, 12.31, 12.4],
	["what is whole already stays", { decimals: 0, rounds: "up" as const }, 31, 31],
	["an error of reckoning is no more", { decimals: 1, rounds: "up" as const }, 0.1 + 0.2, 0.3],
	["else to the nearest", { decimals: 1 }, 12.31, 12.3],
	["no decimals named, nothing rounded", {}, 12.31, 12.31],
])("%s", (_what, column, value, result) => {
	expect(rounded(column, value)).toBe(result);
});
