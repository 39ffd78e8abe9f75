import { expect, test } from "vitest";
import { tableOf, withTexts } from "../../../../src/core/edit/withTexts.ts";
import { unitSheet } from "../../../../src/core/sheets/unit.ts";
import { demoWorkbook } from "../../../../src/ui/state/demoWorkbook.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { wantedLabels } from "../../../../src/ui/subjects/labels/wantedLabels.ts";
import { textOf, withTextDocument } from "../../textDocument.ts";

withTextDocument();

function labelOf(settings: Readonly<Record<string, string>>, date = "2027-03-01"): string {
	const demo = demoWorkbook();
	const keys = tableOf(demo, unitSheet.file).rows.map(([key]) => key);
	const texts = Object.entries(settings).map(([key, text]) => ({
		row: keys.indexOf(key),
		column: "value",
		text,
	}));
	const { state } = new Store(withTexts(demo, unitSheet.file, texts));
	const made = { date, minutes: 7 * 60 };
	const wanted = { solutions: 1, rinseSets: 0, perKit: 0, mix: 0, made, done: undefined };
	return textOf(wantedLabels(state, wanted));
}

test.each([
	[
		"a round",
		{},
		/DISCARD at the end of this round At the latest Tue 2 Mar 2027, 07:00, 24 h after making/,
	],
	[
		"one kit",
		{ reprocessing: "after_each_use" },
		/DISCARD after this kit's soak At the latest Tue 2 Mar/,
	],
	["a day", { solution_made: "each_day" }, /DISCARD AT Tue 2 Mar 2027, 07:00 24 h after making/],
])("what is made for %s is discarded after it", (_what, settings, words) => {
	expect(labelOf(settings)).toMatch(words);
});

// calculations 5, "liquid stock fades": at 45 °C lot B-0211 has 23.7 g/L left on 1 March, 22.7 on the 7th.
// 5.5 L × 5.09 g/L (0.5 %, and what three wet kits carry in) are 28.0 g.
test.each([
	["2027-03-01", /then 1.190 mL Liquid bleach 3\.5 %, lot B-0211/],
	["2027-03-07", /then 1.240 mL Liquid bleach 3\.5 %, lot B-0211/],
	["2027-07-18", /Product _+ lot _+/],
])("a label made on %s says what is measured out on that day", (date, words) => {
	expect(labelOf({ store_c: "45" }, date)).toMatch(words);
});
