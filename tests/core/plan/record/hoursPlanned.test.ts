import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { hoursDone, hoursPlanned } from "../../../../src/core/plan/record/hoursPlanned.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { numberIn, rowsOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const DAY = "2027-03-01";
const one = {
	"rounds.csv": "start,label\n07:00,morning",
	"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-28,",
};
const planned = (workbook: Workbook, day = DAY) =>
	hoursPlanned(plan(workbook), readWorkbook(workbook), day);

test("hands on of every step, for all people; the fire from lighting until the last pot was held", () => {
	// One kit: 20 min to prepare, 50 min of work, 20 min to store; the soak needs nobody.
	const unit = unitWith({ boil_minutes_measured: 40, pots: 4 }, one);
	const hours = planned(unit);
	expectWithin(hours?.handsOn ?? 0, 1.5, 1e-9, "h");
	// Two batches, each held for a minute, once a day.
	const heating = numberIn(rowsOf(plan(unit), "boiling.csv")[0], "heat_minutes") ?? 0;
	expectWithin(hours?.atFires ?? 0, (heating + 2 * 1) / 60, 1e-9, "h");
	expect(planned(unit, "2027-07-01")).toBeUndefined();
	// Two people share the kit's work and are both there.
	expectWithin(
		planned(unitWith({ workers_per_round: 2 }, one))?.handsOn ?? 0,
		(65 / 60) * 2,
		1e-9,
		"h",
	);
});

test.each([
	["rounds", smallUnit({ ...one, "steps.csv": "step,basis,minutes,hands_on\nsoak,load,long,no" })],
	["fires", unitWith({ method: "boiling", pot_litres: "big" }, one)],
	["minutes that a pot is held", unitWith({ boil_hold_minutes: "long" }, one)],
] as const)("where the %s are not known there are no hours, and not 0", (_what, workbook) => {
	expect(planned(workbook)).toBeUndefined();
});

test("hours done are those of rounds with an end, over midnight too", () => {
	const done = (people: number | string, ...rows: string[]) =>
		hoursDone(
			readWorkbook(
				unitWith(
					{ workers_per_round: people },
					{ "rounds-done.csv": ["date,start,ended,kits", ...rows].join("\n") },
				),
			),
			[DAY],
		);
	const rounds = [`${DAY},07:00,08:30,A`, `${DAY},23:00,00:30,A`, `${DAY},14:00,,A`];
	expect(done(1, ...rounds, "2027-03-02,07:00,09:00,A")).toEqual({ hours: 3, timed: 2, rounds: 3 });
	expect(done(2, ...rounds)).toEqual({ hours: 6, timed: 2, rounds: 3 });
	// calculations.md: no number is invented to fill a hole, never 0.
	expect(done("all", ...rounds)).toBeUndefined();
	expect(done(1)).toEqual({ hours: 0, timed: 0, rounds: 0 });
});
