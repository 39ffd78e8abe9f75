import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { plannedDays } from "../../../../src/core/plan/record/plannedDays.ts";
import { unitWith } from "../../smallUnit.ts";

const measuresOf = (workbook: ReturnType<typeof unitWith>) =>
	plannedDays(plan(workbook)).map(({ date, measure }) => [date, measure].join(" "));

test("each measure of each day that has a figure, and no other", () => {
	const all = measuresOf(unitWith({ plan_days: 2 }));
	// The gauze of a line that nobody can read.
	const usage = { "usage.csv": "item,basis,quantity,note\ngauze squares,piece,many," };
	expect(measuresOf(unitWith({ plan_days: 2 }, usage))).toEqual(
		all.filter((each) => !each.endsWith("gauze_pieces")),
	);
});
