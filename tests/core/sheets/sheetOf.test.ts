import { expect, test } from "vitest";
import { isTyped, sheetOf } from "../../../src/core/sheets/sheetOf.ts";

test.each([
	["lots.csv", "lots.csv", true],
	["order.csv", "order.csv", false],
	["letters.csv", undefined, false],
])("%s: known, and typed by people", (file, known, typed) => {
	expect([sheetOf(file)?.file, isTyped(file)]).toEqual([known, typed]);
});
