import { expect, test } from "vitest";
import { registerMark } from "../../../src/core/record/registerMark.ts";

test.each([
	["k1", "K1"],
	["K1", "K1"],
	["KIT 2", "Kit 2"],
	["é3", "É3"],
	["i4", "İ4"],
	["K11", "K11"],
	["ı4", "ı4"],
	["KIß 2", "KIß 2"],
	["", ""],
])("“%s” is the register's “%s”", (written, mark) => {
	expect(registerMark(["K1", "Kit 2", "É3", "İ4"])(written)).toBe(mark);
});

test.each(["k1", "K1"])("of marks that differ only so, “%s” is itself", (written) => {
	for (const known of [
		["k1", "K1"],
		["K1", "k1"],
	])
		expect(registerMark(known)(written)).toBe(written);
});
