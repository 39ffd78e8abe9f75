import { describe, expect, test } from "vitest";
import { proposedName } from "../../../src/ui/files/proposedName.ts";

describe("a name for a workbook's file", () => {
	test.each([
		["Willow Ford", "2027-03-01", undefined, "basinbook Willow Ford 2027-03-01.zip"],
		[
			"Willow Ford",
			"2027-03-01",
			"2027-02-27",
			"basinbook Willow Ford 2027-03-01 saved 2027-02-27.zip",
		],
		[
			"Maternité de l’Étoile",
			"2027-03-01",
			undefined,
			"basinbook Maternité de l’Étoile 2027-03-01.zip",
		],
		["A/B: «C» <D>|E?*", "01/03/2027", undefined, "basinbook A B «C» D E 01 03 2027.zip"],
		["..\\..\\con", "", undefined, "basinbook .. .. con.zip"],
		["two\r\nlines\t\u0000", "2027-03-01", undefined, "basinbook two lines 2027-03-01.zip"],
		["gnp\u202eexe.", "2027-03-01", undefined, "basinbook gnpexe. 2027-03-01.zip"],
		["half \ud83d of a sign", "2027-03-01", undefined, "basinbook half of a sign 2027-03-01.zip"],
		["", "", undefined, "basinbook.zip"],
	])("%j, first day %j", (unit, first, savedOn, name) => {
		expect(proposedName(unit, first, savedOn)).toBe(name);
	});

	test("an accent typed in two pieces becomes one letter", () => {
		expect(proposedName("E\u0301toile", "")).toBe("basinbook Étoile.zip");
	});

	test.each([["long ".repeat(100)], ["Ę".repeat(300)], ["生".repeat(300)], ["👶".repeat(300)]])(
		"%s is cut between letters to what every disk takes",
		(unit) => {
			const name = proposedName(unit, "2027-03-01".repeat(9), "2027-02-27");
			expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(143);
			expect(name).not.toMatch(/\p{Cs}| {2}|\ufffd/u);
			expect(name).toMatch(/^basinbook .* saved 2027-02-27\.zip$/);
		},
	);
});
