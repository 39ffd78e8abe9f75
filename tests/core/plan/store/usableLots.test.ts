import { expect, test } from "vitest";
import { usableLots } from "../../../../src/core/plan/store/usableLots.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

const LOTS = [
	"liquid,E,10,,,,2027-05-01",
	"liquid,C,10,,,2027-03-05,2027-04-01",
	"liquid,D,10,,,2027-03-05,2027-04-01",
	"liquid,B,10,,,,2027-03-10",
	"liquid,F,10,,,,",
	"liquid,G,0,,,,2027-03-20",
	"liquid,H,10,,,2027-02-27,2027-03-20",
	"liquid,A,10,,2027-02-28,2027-02-27,2027-03-20",
	"liquid,I,10,,2027-02-27,2027-03-05,2027-03-20",
	"powder,P,10,,,,",
];

/** Marks of the lots that can be used on a day, in their order. */
function usableOn(day: string, settings: Record<string, string> = {}): string {
	const lots = ["item,lot,quantity,made_on,received_on,arrives_on,expires_on", ...LOTS].join("\n");
	const read = readWorkbook(unitWith(settings, { "lots.csv": lots }));
	return usableLots(read, "liquid", day)
		.map(({ value }) => value.lot)
		.join("");
}

// G is used up, H has not come although its day has passed, I came before its day.
test.each([
	["2027-03-04", "BAIEF"],
	["2027-03-05", "BAICDEF"],
	["2027-03-10", "BAICDEF"],
	["2027-03-11", "AICDEF"],
	["2027-04-01", "CDEF"],
	["2027-05-02", "F"],
])("on %s the lot that ends first comes first: %s", (day, lots) => {
	expect(usableOn(day)).toBe(lots);
});

test("without a first day what is overdue is so by the day asked for", () => {
	expect(usableOn("2027-02-27", { plan_start: "" })).toContain("H");
	expect(usableOn("2027-02-28", { plan_start: "" })).not.toContain("H");
});
