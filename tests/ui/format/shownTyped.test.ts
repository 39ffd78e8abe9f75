import { expect, test } from "vitest";
import { kitsSheet } from "../../../src/core/sheets/kits.ts";
import { settings } from "../../../src/core/sheets/settings.ts";
import { shownTyped } from "../../../src/ui/format/shownTyped.ts";

const figure = settings.target_strength_pct.value;

test.each([
	["0.5", figure, ",", "0,5"],
	[" 0.5 ", figure, ",", " 0,5 "],
	["0,5", figure, ",", "0,5"],
	["0.5", figure, ".", "0.5"],
	["much", figure, ",", "much"],
	["1.2.3", figure, ",", "1.2.3"],
	["700.5", figure, ",", "700.5"],
	["Mask 2.5", kitsSheet.columns.note.value, ",", "Mask 2.5"],
	["in_service", kitsSheet.columns.status.value, ",", "in service"],
	["2.5", undefined, ",", "2.5"],
] as const)("%s is shown as people read it", (text, kind, sign, shown) => {
	expect(shownTyped(text, kind, sign)).toBe(shown);
});
