import { expect, test } from "vitest";
import { roundsByDate } from "../../../src/core/plan/byDate.ts";
import { withCounts } from "../../../src/core/plan/dayFigures.ts";
import { plannedUnit } from "../../../src/core/plan/plannedUnit.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { valueIn } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

/** The rounds of two weeks, of kits of two kinds. */
function twoWeeks(births: string) {
	const files = {
		"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction,bulb,1",
		"births.csv": `date,births,note\n${births}`,
	};
	const planned = plannedUnit(readWorkbook(unitWith({ plan_days: 14 }, files)));
	if (!planned.ok) throw new Error("no days");
	const days = withCounts(planned.value.unit, planned.value.days);
	return [days.slice(0, 7), days.slice(7)].map((week) => roundsByDate(week));
}

test("weeks that bring the same are one list, each with its own dates", () => {
	const [first, second] = twoWeeks("");
	// What is remembered is let go where it is too much, perhaps just between the two weeks; not twice in a row.
	const tries = [[first, second], twoWeeks("")];
	expect(tries.some(([one, other]) => valueIn(one) === valueIn(other))).toBe(true);
	const datesOf = (rounds = first) =>
		Object.keys(rounds?.origin.kind === "computed" ? rounds.origin.inputs : {});
	expect(datesOf(first)[0]).toBe("2027-03-01");
	expect(datesOf(second)[0]).toBe("2027-03-08");
});

test("a week with other births is a list of its own", () => {
	const [first, second] = twoWeeks("2027-03-10,9,");
	expect(valueIn(first)).not.toEqual(valueIn(second));
});

test("what cannot be read stays without an answer", () => {
	const [first, second] = twoWeeks("2027-03-10,many,");
	expect([first?.outcome.ok, second?.outcome.ok]).toEqual([true, false]);
});
