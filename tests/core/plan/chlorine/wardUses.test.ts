import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { wardUses } from "../../../../src/core/plan/chlorine/wardUses.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { codesOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const DATES = ["2027-03-01", "2027-03-02", "2027-03-03"];
const PRODUCTS =
	"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use";

/** What each use takes on the first day and over three days: numbers, or why there are none. */
function usesOf(lines: string[], files: Record<string, string> = {}) {
	const ward = ["use,litres_per_day,strength_pct,note", ...lines].join("\n");
	const read = readWorkbook(unitWith({}, { "ward-solution.csv": ward, ...files }));
	const unit = unitFigures(read, "2027-03-01", "2027-03-03");
	return wardUses(unit, DATES).map(({ use, name, litres, firstDay, quantity }) => [
		use,
		valueIn(name),
		valueIn(litres) ?? codesOf(litres).join(),
		valueIn(firstDay)?.quantity ?? codesOf(firstDay).join(),
		valueIn(quantity) ?? codesOf(quantity).join(),
	]);
}

test("each use is mixed once a day from the product in use, 3.5 %", () => {
	// 7 L of 0.5 % take 1 L of it, 3.5 L of 0.1 % a tenth of that.
	expect(usesOf(["floors,7,0.5,", "spills,3.5,0.1,"])).toEqual([
		["floors", "floors", 7, 1000, 3000],
		["spills", "spills", 3.5, 100, 300],
	]);
});

test("one that cannot be read, with a name or without, or mixed from nothing, has no figures", () => {
	expect(usesOf(["floors,some,0.5,", ",7,0.5,"])).toEqual([
		["floors", "floors", "bad-cell", "bad-cell", "bad-cell"],
		["line 3", "line 3", "bad-cell", "bad-cell", "bad-cell"],
	]);
	const none = { "chlorine.csv": `${PRODUCTS}\nliquid,liquid,3.5,pct_w_v,,0,,no` };
	expect(usesOf(["floors,7,0.5,"], none)).toEqual([
		["floors", "floors", 7, "product-in-use", "product-in-use"],
	]);
});

test("why one that cannot be read has none leads to its litres", () => {
	const ward = "use,litres_per_day,strength_pct,note\nfloors,some,0.5,";
	const read = readWorkbook(unitWith({}, { "ward-solution.csv": ward }));
	const [use] = wardUses(unitFigures(read, "2027-03-01", "2027-03-03"), DATES);
	expect(use?.quantity.origin).toMatchObject({
		place: { file: "ward-solution.csv", line: 2, column: "litres_per_day" },
	});
});
