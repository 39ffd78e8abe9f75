import { expect, test } from "vitest";
import { nameFigure, typedFigure } from "../../../src/core/calculation.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { valueIn } from "../../../src/core/outcome.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { rowsOf } from "../../../src/core/plan/rowsOf.ts";
import { boilingSheet } from "../../../src/core/sheets/boiling.ts";
import { stockSheet } from "../../../src/core/sheets/stock.ts";
import { tonightSheet } from "../../../src/core/sheets/tonight.ts";
import { shownChoice } from "../../../src/ui/format/shownChoice.ts";
import { shownDay, shownDayAndYear } from "../../../src/ui/format/shownDay.ts";
import { shownAs, shownCell, shownFigure } from "../../../src/ui/format/shownFigure.ts";
import { shownNumber, shownPlain, shownUp } from "../../../src/ui/format/shownNumber.ts";
import { unitWith } from "../../core/smallUnit.ts";

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

test("a number is shown as its column rounds it", () => {
	expect(shownAs({ decimals: 1, rounds: "up" }, 12.31)).toBe("12.4");
	expect(shownAs({ decimals: 1 }, 12.31)).toBe("12.3");
	expect(shownAs({}, 12.31)).toBe("12.31");
});

test("where rows have measures of their own, decimals that say nothing are left out", () => {
	expect(shownAs({ decimals: 1, mixed: true, rounds: "up" }, 6660)).toBe("6\u202f660");
	expect(shownAs({ decimals: 1, mixed: true, rounds: "up" }, 6659.93)).toBe("6\u202f660");
	expect(shownAs({ decimals: 1, mixed: true, rounds: "up" }, 2.41)).toBe("2.5");
	expect(shownAs({ decimals: 1, mixed: true }, 0.04)).toBe("<0.1");
	expect(shownAs({ decimals: 0, mixed: true }, 10)).toBe("10");
});

test("words of the files are words for people, days are named, texts stay, a blank is blank", () => {
	const { measure, counted_difference, item, on_hand } = stockSheet.columns;
	expect(shownCell(measure, nameFigure("", "pair"))).toBe("pair");
	expect(shownCell(boilingSheet.columns.fuel, nameFigure("", "lpg"))).toBe("gas (LPG)");
	expect(shownCell(boilingSheet.columns.date, nameFigure("", "2027-03-03"))).toBe("Wed 3 Mar");
	expect(shownCell(item, nameFigure("", "lpg"))).toBe("lpg");
	expect(shownCell(item, nameFigure("", "Evening, 2027-03-03"))).toBe("Evening, Wed 3 Mar");
	expect(shownCell(counted_difference, nameFigure("", "+1.5"))).toBe("+1.5");
	expect(shownCell(on_hand, nameFigure("", null))).toBe("");
});

test("the night before asks for the water and the fuel that the boiling sheet shows", () => {
	const made = plan(unitWith({ plan_days: 2, heat_kw: 3, boil_hold_minutes: 5 }));
	const { start_litres, fuel_quantity } = boilingSheet.columns;
	const boiled = rowsOf(made, boilingSheet).map(
		(row) =>
			`boil ${shownCell(start_litres, row.start_litres)} L in pots ${valueIn(row.pots)}; fuel ${shownCell(fuel_quantity, row.fuel_quantity)} kg`,
	);
	const asked = rowsOf(made, tonightSheet).map(({ task }) => String(valueIn(task)));
	expect(asked.length).toBeGreaterThan(0);
	asked.forEach((task, i) => {
		expect(task).toContain(boiled[i]);
	});
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
