import { expect, test } from "vitest";
import { withCounts } from "../../../src/core/plan/dayFigures.ts";
import { firstLike } from "../../../src/core/plan/firstLike.ts";
import { plannedUnit } from "../../../src/core/plan/plannedUnit.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../smallUnit.ts";

/** The first day like each of six, which go from 1 to 6 March. */
function likeness(
	files: Record<string, string>,
	settings: Parameters<typeof unitWith>[0] = {},
): number[] {
	const planned = plannedUnit(readWorkbook(unitWith({ plan_days: 6, ...settings }, files)));
	if (!planned.ok) throw new Error("no days");
	const days = withCounts(planned.value.unit, planned.value.days);
	const like = firstLike(days);
	return days.map((_, day) => like(day));
}

const births = (text: string) => ({ "births.csv": `date,births,note\n2027-03-03,${text},` });
const fading = {
	"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		liquid,liquid,3.5,pct_w_v,,1,,yes`,
};

test.each([
	["all births alike", {}, [0, 0, 0, 0, 0, 0]],
	[
		"more births: that day, and the next, whose first round has its evening",
		births("9"),
		[0, 0, 2, 3, 0, 0],
	],
	[
		"births that cannot be read: two days that are like no other",
		births("many"),
		[0, 0, 2, 3, 0, 0],
	],
	["product that is weaker each day", fading, [0, 1, 2, 3, 4, 5]],
] as const)("%s", (_, files, expected) => {
	expect(likeness(files)).toEqual(expected);
});

const twoKinds = { "kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction,bulb,1" };

test.each([
	["of two kinds", twoKinds, {}, [3, 0, 0, 0, 0, 0]],
	// Up to three days before it count.
	["whose water is boiled once a kit waits", {}, { boil_for: "after_use" }, [3, 4, 5, 6, 6, 6]],
])("days %s that bring the same are alike", (_, files, settings, expected) => {
	const like = likeness({ ...births("9"), ...files }, { plan_days: 9, ...settings });
	expect(like.slice(3)).toEqual(expected);
});
