import { expect, test } from "vitest";
import { dateForms } from "../../../src/core/values/dateForms.ts";

test.each<[string, number | undefined, string | undefined, string | undefined]>([
	["03/01/2027", undefined, "2027-01-03", "2027-03-01"],
	["28/02/2027", undefined, "2027-02-28", undefined],
	["2/28/2027", undefined, undefined, "2027-02-28"],
	["3-1-2027", undefined, "2027-01-03", "2027-03-01"],
	[" 3.1.2027. ", undefined, "2027-01-03", undefined],
	["3/1-2027", undefined, undefined, undefined],
	["2027/3/1", undefined, "2027-03-01", "2027-03-01"],
	[" 2027.3.1 ", undefined, "2027-03-01", "2027-03-01"],
	["2027/12/31", undefined, "2027-12-31", "2027-12-31"],
	["2027/13/1", undefined, undefined, undefined],
	["x2027/3/1", undefined, undefined, undefined],
	["12027/3/1", undefined, undefined, undefined],
	["2027/3/1x", undefined, undefined, undefined],
	["2027/3-1", undefined, undefined, undefined],
	["2027/3/111", undefined, undefined, undefined],
	["27/3/1", undefined, undefined, undefined],
	["x03/01/2027", undefined, undefined, undefined],
	["03/01/20277", undefined, undefined, undefined],
	["03/01/27", undefined, undefined, undefined],
	["03/01/27", 2027, "2027-01-03", "2027-03-01"],
	["03/01/77", 2027, "2077-01-03", "2077-03-01"],
	["03/01/78", 2027, "1978-01-03", "1978-03-01"],
	["03/01/99", 2001, "1999-01-03", "1999-03-01"],
	["tomorrow", 2027, undefined, undefined],
])("%j near %j has the day in front as %s, the month as %s", (text, near, dayFirst, monthFirst) => {
	expect(dateForms(text, near)).toEqual({ dayFirst, monthFirst });
});
