import { expect, test } from "vitest";
import { shortened } from "../../../src/ui/format/shortened.ts";

test.each([
	["Morning", 7, "Morning"],
	["Mornings", 7, "Mornin…"],
	["Matinée du dimanche", 8, "Matinée…"],
	["Morning", -3, "Morni…"],
	["Matinée du dimanche", 9, "Matinée…"],
	["Liquid bleach 3.5 %", 17, "Liquid bleach 3…"],
	["Noon", 0, "Noon"],
	["👶👶👶👶👶👶👶", 6, "👶👶👶👶👶…"],
])("“%s” in %i letters: “%s”", (name, most, short) => {
	expect(shortened(name, most)).toBe(short);
});
