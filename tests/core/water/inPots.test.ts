import { expect, test } from "vitest";
import { inPots } from "../../../src/core/water/inPots.ts";

test("one pot is no pots", () => {
	expect(inPots("2")).toBe("in pot 2");
	expect(inPots("1, 2")).toBe("in pots 1, 2");
});
