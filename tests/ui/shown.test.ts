import { expect, test } from "vitest";
import { typedFigure } from "../../src/core/calculation.ts";
import { poisson } from "../../src/core/counts/poisson.ts";
import { shownChoice } from "../../src/ui/format/shownChoice.ts";
import { shownDay, shownDayAndYear } from "../../src/ui/format/shownDay.ts";
import { shownFigure } from "../../src/ui/format/shownFigure.ts";
import { shownNumber, shownPlain, shownUp } from "../../src/ui/format/shownNumber.ts";

test("thousands stand apart by a thin space", () => {
	expect(shownNumber(1234567.891, 1)).toBe("1\u202f234\u202f567.9");
	expect(shownNumber(999, 0)).toBe("999");
	expect(shownPlain(1640)).toBe("1\u202f640");
	expect(shownPlain(0.7837581)).toBe("0.783758");
});

test("what is set aside is never shown as less than it is", () => {
	expect(shownUp(12.31, 1)).toBe("12.4");
	expect(shownUp(12.3, 1)).toBe("12.3");
	expect(shownUp(0.1 + 0.2, 1)).toBe("0.3");
});

test("a little is never shown as nothing", () => {
	expect(shownNumber(0.00024, 3)).toBe("<0.001");
	expect(shownNumber(0, 3)).toBe("0.000");
});

test("days are named, other text stays", () => {
	expect(shownDay("2027-03-03")).toBe("Wed 3 Mar");
	expect(shownDayAndYear("2027-03-03")).toBe("Wed 3 Mar 2027");
	expect(shownDay("soon")).toBe("soon");
});

test("only words of the list lose their underscore", () => {
	expect(shownChoice("in_service", ["in_service"])).toBe("in service");
	expect(shownChoice("my_own", ["in_service"])).toBe("my_own");
});

test.each([
	[
		"a few likely numbers, each with its chance",
		poisson(0.9),
		"0: 41 %, 1: 37 %, 2: 16 %, 3: 5 %, 4: 1 %",
	],
	["many: from where to where", poisson(40), "mostly 27 to 54"],
])("how likely each number is, %s", (_what, counts, words) => {
	const figure = typedFigure("Rounds", "rounds", counts, { file: "", line: null, column: "" });
	expect(shownFigure(figure)).toBe(words);
});
