import { expect, test } from "vitest";
import { renewedPerDay } from "../../../src/core/kits/renewedPerDay.ts";

const { kitsInService, reprocessing } = renewedPerDay.example.inputs;

test("none is renewed where there is none, or where kits keep for ever", () => {
	expect(renewedPerDay.compute({ kitsInService: 0, reprocessing })).toBe(0);
	const forEver = { ...reprocessing, life: null };
	expect(renewedPerDay.compute({ kitsInService, reprocessing: forEver })).toBe(0);
});
