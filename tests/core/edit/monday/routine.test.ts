import { expect, test } from "vitest";
import { routine, withNextRoutine, withTick } from "../../../../src/core/edit/monday/routine.ts";
import { movedOn } from "../../../../src/core/edit/movedOn.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

function moved(workbook: Workbook): Workbook {
	const outcome = movedOn(workbook, []);
	if (!outcome.ok) throw new Error("not moved on");
	return outcome.value.workbook;
}

const stands = (workbook: Workbook) => {
	const now = routine(workbook);
	return now && [now.prepares, now.hasMoved, [...now.done].join(" "), now.past[0], now.past.at(-1)];
};

test("ticks hold from the week before to the week they prepare, and no longer", () => {
	const begun = smallUnit();
	expect(stands(begun)).toEqual(["2027-03-08", false, "", "2027-03-01", "2027-03-07"]);
	const ticked = withTick(withTick(begun, "counts", true), "days", true);
	expect(stands(ticked)).toEqual(["2027-03-08", false, "days counts", "2027-03-01", "2027-03-07"]);
	const next = withTick(moved(ticked), "move", true);
	expect(stands(next)).toEqual([
		"2027-03-08",
		true,
		"days counts move",
		"2027-03-01",
		"2027-03-07",
	]);
	expect(stands(withTick(next, "counts", false))?.[2]).toBe("days move");
	const anew = withNextRoutine(next);
	expect(stands(anew)).toEqual(["2027-03-15", false, "", "2027-03-08", "2027-03-14"]);
	expect(anew.tables["unit.csv"]?.rows).toContainEqual(["monday_done", ""]);
	// Whoever moves on without the page has no tick of a week that is gone.
	expect(stands(moved(moved(next)))).toEqual(["2027-03-29", false, "", "2027-03-22", "2027-03-28"]);
});

test("a tick is one cell of the settings", () => {
	const { rows } = withTick(smallUnit(), "print", true).tables["unit.csv"] ?? { rows: [] };
	expect(rows).toContainEqual(["monday_done", "2027-03-08 print"]);
});

test.each([
	["no first day", { plan_start: "soon" }],
	["no days", { plan_days: "a week" }],
])("with %s there is no routine, and nothing is ticked", (_words, settings) => {
	const workbook = unitWith(settings);
	expect(routine(workbook)).toBeUndefined();
	expect(withTick(workbook, "days", true)).toBe(workbook);
});

test("words that are no step are let go", () => {
	expect(stands(unitWith({ monday_done: "2027-03-08 days holiday" }))?.[2]).toBe("days");
	expect(stands(unitWith({ monday_done: "2027-03-08  days" }))?.[2]).toBe("days");
	expect(stands(unitWith({ monday_done: "soon days" }))?.[2]).toBe("");
});
