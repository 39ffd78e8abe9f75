import { expect, test } from "vitest";
import { withTexts } from "../../../../src/core/edit/withTexts.ts";
import { lotsSheet } from "../../../../src/core/sheets/lots.ts";
import { demoWorkbook } from "../../../../src/ui/state/demoWorkbook.ts";
import { type State, Store } from "../../../../src/ui/state/store.ts";
import { wantedLabels } from "../../../../src/ui/subjects/labels/wantedLabels.ts";
import { type Mix, mixesOfFirstDay, remarkOn } from "../../../../src/ui/subjects/mixing/mix.ts";
import { mixingSheetOut } from "../../../../src/ui/subjects/mixing/mixingSheetOut.ts";
import { wallPages } from "../../../../src/ui/subjects/mixing/wallPages.ts";
import { wallTableOut } from "../../../../src/ui/subjects/mixing/wallTableOut.ts";
import { textOf, withTextDocument } from "../../textDocument.ts";

withTextDocument();

/** The demo with other texts in the first lot, which is measured out from. */
function demoWithLot(texts: Readonly<Record<string, string>>): State {
	const changed = Object.entries(texts).map(([column, text]) => ({ row: 0, column, text }));
	return new Store(withTexts(demoWorkbook(), lotsSheet.file, changed)).state;
}

const places = (state: State) => ({
	page: remarkOn(state, mixesOfFirstDay(state)[0] as Mix),
	sheet: textOf(mixingSheetOut.pages(state)),
	wall: textOf(wallTableOut.pages(state)),
	label: textOf(
		wantedLabels(state, {
			solutions: 1,
			rinseSets: 0,
			perKit: 0,
			mix: 0,
			made: undefined,
			done: undefined,
		}),
	),
});

test("a liquid of unknown age is said to be so wherever it is measured out", () => {
	const said = places(demoWithLot({ made_on: "", received_on: "" }));
	for (const words of Object.values(said)) expect(words).toMatch(/age is not known/);
	const { wall, ...today } = said;
	for (const words of Object.values(today)) expect(words).toMatch(/180 days old/);
	// The wall table is for the end of March, 30 days later.
	expect(wall).toMatch(/this table is for 210 days old/);
});

test("a lot with too little for one preparation is said on the page, the sheet and the label", () => {
	const { page, sheet, label } = places(demoWithLot({ quantity: "400" }));
	for (const words of [page, sheet, label])
		expect(words).toMatch(/Too little for one preparation: 400 mL left, 830 mL needed\. Use lot/);
});

test("the wall table is in steps that can be measured, for the weakest day of its month", () => {
	const wall = textOf(wallTableOut.pages(demoWithLot({})));
	// 5.5 L of 0.509 % from what is left of 33.858 g/L at the end of March.
	expect(wall).toMatch(/5\.5\sL about 4\.5\sL 8[3-9]0\smL the 5\.5\sL mark/);
	expect(wall).toMatch(
		/only until Wed 31 Mar 2027 \(measured out for its weakest day of the month\)/,
	);
});

test("nothing is said of a lot as it should be", () => {
	for (const words of Object.values(places(demoWithLot({}))))
		expect(words).not.toMatch(/age is not known|Too little/);
});

test("of more lots than a page holds, each page has the name of the product and the cautions", () => {
	const received = [
		{ row: 2, column: "received_on", text: "2027-02-25" },
		{ row: 2, column: "arrives_on", text: "" },
	];
	const changed = new Store(withTexts(demoWorkbook(), lotsSheet.file, received)).state;
	expect(wallPages(changed).map(({ lots, useFirst }) => [lots, useFirst])).toEqual([
		[["B-0211", "B-0234"], "B-0211"],
		[["B-0251"], "B-0211"],
		[["P-17"], undefined],
		[["T-08"], undefined],
	]);
	const pages = wallTableOut.pages(changed).map((page) => textOf([page]));
	expect(pages).toHaveLength(4);
	for (const page of pages) expect(page).toMatch(/mixing 0\.5 % solution.*Never let chlorine/);
	expect(pages.filter((page) => page.includes("use this one first"))).toHaveLength(1);
});
