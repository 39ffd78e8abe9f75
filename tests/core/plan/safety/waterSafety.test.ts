import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { countsOfDay } from "../../../../src/core/plan/countsOfPeriod.ts";
import { withCounts } from "../../../../src/core/plan/dayFigures.ts";
import { litresBoiled } from "../../../../src/core/plan/measureFigures.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { roundPlans } from "../../../../src/core/plan/rounds/roundPlans.ts";
import { waterSafety } from "../../../../src/core/plan/safety/waterSafety.ts";
import { firesOfPlan } from "../../../../src/core/plan/water/firesOfPlan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

const kits = Array.from({ length: 9 }, (_, at) => `K${at},bag set,in_service,,`);

/** Of a quiet day and a busy one: the day, and the litres set aside for all its rounds. */
function rowsOf(settings: Record<string, string | number> = {}) {
	const workbook = unitWith(
		{ plan_days: 2, heat_kw: 3, boil_for: "every_round", ...settings },
		{
			"births.csv": "date,births,note\n2027-03-01,1,\n2027-03-02,40,",
			"kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n"),
		},
	);
	const planned = valueIn({ outcome: plannedUnit(readWorkbook(workbook)) });
	if (!planned) throw new Error("the unit has no days");
	const { unit } = planned;
	const days = withCounts(unit, planned.days);
	const boiled = days.map((day) => {
		const counts = countsOfDay(unit, day);
		return { date: day.date, boiled: litresBoiled(unit, counts, counts.loads.chlorine as never) };
	});
	const fires = firesOfPlan(unit, () => roundPlans(unit, days)).made;
	return waterSafety(unit, fires, boiled).map((row) => [
		valueIn(row.promise),
		valueIn(row.day),
		valueIn(row.set_aside),
		valueIn(row.unit),
	]);
}

test("water boiled for every round: of each day that of its own rounds", () => {
	// Three buckets of 10 L for each of three rounds; on the busy day the fullest soaks two loads.
	expect(rowsOf()).toEqual([
		["boiled_for_rounds", "2027-03-01", 90, "L"],
		["boiled_for_rounds", "2027-03-02", 120, "L"],
	]);
});

test.each([
	["boiled to stand ready", { boil_for: "standing" }],
	["reprocessed after each use", { reprocessing: "after_each_use" }],
])("%s there are no rounds to boil for", (_, settings) => {
	expect(rowsOf(settings)).toEqual([]);
});
