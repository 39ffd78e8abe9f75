import { expect, test } from "vitest";
import type { Label } from "../../../src/core/chlorine/availableChlorine.ts";
import { likelySlip } from "../../../src/core/chlorine/likelySlip.ts";

test.each<[Label["form"], number, Label["measure"], RegExp]>([
	["powder", 0.7, "pct_w_w", /^A share in place of a percentage\? 0\.7 would be 70 %\.$/],
	["powder", 1, "pct_w_w", / 1 would be 100 %/],
	["powder", 1.1, "pct_w_w", /^$/],
	["powder", 90, "pct_w_w", /^$/],
	["tablet", 1670, "g_per_tablet", /^Milligrams .* 1670 mg would be 1\.67 g; /],
	["tablet", 1, "g_per_tablet", /^Tablets so small are for drinking water/],
	["liquid", 500, "g_per_l", /500 mg\/L would be 0\.5 g\/L\.$/],
	["liquid", 500, "mg_per_l", /^$/],
	[
		"liquid",
		120,
		"chlorometric_degree",
		/^Grams per litre typed as degrees\? 120 g\/L would be 12 %/,
	],
	["liquid", 35.556, "pct_w_v", / would be 3\.556 %; for 35\.556 degrees choose/],
])("a %s of %d %s: %s", (form, strength, measure, words) => {
	expect(likelySlip({ form, strength, measure, density: null })).toMatch(words);
});
