import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { unitFigures } from "../../../../src/core/plan/unitFigures.ts";
import { roundMixes } from "../../../../src/core/plan/water/roundMixes.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

const FIRST = "2027-03-01";

/** What each of the rounds at 07:00, 14:00 and 21:00 makes. */
function mixes(settings: Record<string, string | number>) {
	const unit = unitFigures(readWorkbook(unitWith(settings)), FIRST, FIRST);
	return (valueIn(unit.timetable.rounds) ?? []).map((round) =>
		valueIn(roundMixes(unit, { round })),
	);
}

// calculations.md 5: each day "at most `solution_life_hours`": at the end of them it is poured away.
test.each([
	["every round makes its own", "each_round", 24, [1, 1, 1]],
	["once for the day", "each_day", 24, [1, 0, 0]],
	["until just after the last round has begun", "each_day", 14.1, [1, 0, 0]],
	["until the last round begins", "each_day", 14, [1, 0, 1]],
	["until the next round begins", "each_day", 7, [1, 1, 1]],
])("%s", (_, solution_made, solution_life_hours, expected) => {
	expect(mixes({ solution_made, solution_life_hours })).toEqual(expected);
});
