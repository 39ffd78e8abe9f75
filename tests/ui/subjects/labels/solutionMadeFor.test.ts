import { expect, test } from "vitest";
import { tableOf, withTexts } from "../../../../src/core/edit/withTexts.ts";
import { unitSheet } from "../../../../src/core/sheets/unit.ts";
import { demoWorkbook } from "../../../../src/ui/state/demoWorkbook.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { wantedLabels } from "../../../../src/ui/subjects/labels/wantedLabels.ts";
import { textOf, withTextDocument } from "../../textDocument.ts";

withTextDocument();

function labelOf(settings: Readonly<Record<string, string>>): string {
	const demo = demoWorkbook();
	const keys = tableOf(demo, unitSheet.file).rows.map(([key]) => key);
	const texts = Object.entries(settings).map(([key, text]) => ({
		row: keys.indexOf(key),
		column: "value",
		text,
	}));
	const { state } = new Store(withTexts(demo, unitSheet.file, texts));
	const made = { date: "2027-03-01", minutes: 7 * 60 };
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
