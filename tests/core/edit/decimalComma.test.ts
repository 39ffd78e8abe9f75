import { expect, test } from "vitest";
import { wrongFor } from "../../../src/core/edit/notAllowed.ts";
import { number } from "../../../src/core/values/number.ts";

const quantity = { label: "Quantity", value: number({ min: 0, max: 1_000_000 }) };

// Files read 5.000 as 5; who writes a decimal comma may mean 5000.
test("on a page with a decimal comma a typed 5.000 is not taken for either", () => {
	expect(wrongFor(quantity, "5.000", ",")).toBe(
		"Quantity: “5.000” can be read in two ways; write 5000 or 5.",
	);
	for (const [typed, both] of [
		["4.500", "4500 or 4,5"],
		[" 1.125", "1125 or 1,1250"],
	] as const)
		expect(wrongFor(quantity, typed, ","), typed).toContain(`write ${both}.`);
	for (const clear of ["1,1250", "5000", "5 000", "5", "5,5", "5.5", "0.125", "5.0000", "1234.125"])
		expect(wrongFor(quantity, clear, ","), clear).toBeUndefined();
	expect(wrongFor(quantity, "5.000", ".")).toBeUndefined();
});
