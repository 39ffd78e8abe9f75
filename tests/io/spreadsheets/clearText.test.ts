import { expect, test } from "vitest";
import { clearText, type Shown } from "../../../src/io/spreadsheets/clearText.ts";
import { builtInFormat, shownBy } from "../../../src/io/spreadsheets/shownBy.ts";

// 2008-01-01 is day 39448 from 1899-12-30 and 37986 from 1904-01-01: ECMA-376 part 1, 18.17.4.1.
test.each<[number, Shown, boolean, string]>([
	[39448, "date", false, "2008-01-01"],
	[37986, "date", true, "2008-01-01"],
	[39448.875, "dateTime", false, "2008-01-01 21:00"],
	[39448, "dateTime", false, "2008-01-01 00:00"],
	[39448.5, "date", false, "2008-01-01 12:00"],
	[39448 - 1e-9, "date", false, "2008-01-01"],
	[7.5 / 24, "time", false, "07:30"],
	[26 / 24, "time", false, "26:00"],
	[59 / 86_400, "time", false, "00:00:59"],
	[1.125, "number", false, "1.125"],
	[0.1 + 0.2, "number", false, "0.30000000000000004"],
	[0.07, "percent", false, "7%"],
	[0.285, "percent", false, "28.5%"],
	[-1, "date", false, "-1"],
	[1e9, "date", false, "1000000000"],
])("%d as %s (from 1904: %s) is %s", (serial, shown, from1904, text) => {
	expect(clearText(serial, shown, from1904)).toBe(text);
});

// Codes of the built-in formats: ECMA-376 part 1, 18.8.30.
test.each<[string, Shown]>([
	["General", "number"],
	["0.00E+00", "number"],
	["#,##0.00", "number"],
	["0%", "percent"],
	["0.00%", "percent"],
	["mm-dd-yy", "date"],
	["d-mmm", "date"],
	["mmm-yy", "date"],
	["h:mm AM/PM", "time"],
	["mm:ss", "time"],
	["[h]:mm:ss", "time"],
	["m/d/yy h:mm", "dateTime"],
	['[$-407]dd\\.\\ mmmm\\ yyyy" um "hh:mm', "dateTime"],
	['#,##0.00" days"', "number"],
	["#,##0\\d", "number"],
	["[Red]0;[Blue]-0", "number"],
	["[$€-407] #,##0.00", "number"],
])("the format %s shows a %s", (code, shown) => {
	expect(shownBy(code)).toBe(shown);
});

test.each<[number, Shown]>([
	[0, "number"],
	[4, "number"],
	[9, "percent"],
	[10, "percent"],
	[14, "date"],
	[20, "time"],
	[22, "dateTime"],
	[46, "time"],
	[49, "number"],
])("the format with the number %d shows a %s", (id, shown) => {
	expect(builtInFormat(id)).toBe(shown);
});
