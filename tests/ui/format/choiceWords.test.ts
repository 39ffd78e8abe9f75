import { describe, expect, test } from "vitest";
import { computedSheets } from "../../../src/core/sheets/computedSheets.ts";
import { settings } from "../../../src/core/sheets/settings.ts";
import { typedSheets } from "../../../src/core/sheets/typedSheets.ts";
import { amountOf } from "../../../src/ui/format/amountOf.ts";
import { choiceWords, shownWord } from "../../../src/ui/format/choiceWords.ts";
import { counted, listed } from "../../../src/ui/format/counted.ts";
import { choiceTyped, shownChoice } from "../../../src/ui/format/shownChoice.ts";
import { shownDate, shownDateAndYear } from "../../../src/ui/format/shownDay.ts";

const columns = [
	...[...computedSheets, ...typedSheets].flatMap((sheet) => Object.values(sheet.columns)),
	...Object.values(settings),
];
const options = columns.map(({ value }) => ("options" in value ? (value.options ?? []) : []));

describe("words of closed lists", () => {
	test("every one has its words for reading", () => {
		const codes = new Set(options.flat());
		expect(codes.size).toBeGreaterThan(50);
		expect([...codes].filter((code) => !Object.hasOwn(choiceWords, code))).toEqual([]);
	});
	test("no list has two of the same words, so that what is typed as it is read has one meaning", () => {
		for (const list of options) {
			const words = list.map((code) => shownWord(code));
			expect(new Set(words).size).toBe(words.length);
		}
	});
	test("what is typed as it is read becomes the word of the file; all else stays as typed", () => {
		const list = ["in_service", "out_of_service"];
		expect(choiceTyped("In service ", list)).toBe("in_service");
		expect(choiceTyped("out_of_service", list)).toBe("out_of_service");
		expect(choiceTyped("in servise", list)).toBe("in servise");
		const typed = [...typedSheets.map((sheet) => sheet.columns), settings].flatMap((all) =>
			Object.values(all).map(({ value }): readonly string[] => value.options ?? []),
		);
		for (const each of typed)
			for (const code of each) expect(choiceTyped(shownChoice(code, each), each)).toBe(code);
	});
	test("a text that is no word of a file stays, also one that every object has", () => {
		expect(shownWord("Gauze swab")).toBe("Gauze swab");
		expect(shownWord("constructor")).toBe("constructor");
	});
});

test("a measure has its plural in a quantity", () => {
	expect(amountOf(19, "tablet")).toBe("19 tablets");
	expect(amountOf(1, "pair")).toBe("1 pair");
	expect(amountOf(2, "bottle")).toBe("2 bottle");
});

test("names are listed, no more than fit", () => {
	expect(listed(["a", "b", "c", "d"], 2)).toBe("a, b and 2 more");
	expect(listed(["a", "b", "c"])).toBe("a, b and c");
	expect(listed(["a"])).toBe("a");
	expect(counted(1, "entry")).toBe("1 entry");
	expect(counted(0, "entry")).toBe("0 entries");
});

test("a date without its weekday", () => {
	expect(shownDate("2027-03-01")).toBe("1 Mar");
	expect(shownDateAndYear("2027-12-31")).toBe("31 Dec 2027");
	expect(shownDateAndYear("not usable")).toBe("not usable");
});
