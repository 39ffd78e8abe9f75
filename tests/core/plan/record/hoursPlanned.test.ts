import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { hoursDone, hoursPlanned } from "../../../../src/core/plan/record/hoursPlanned.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const DAY = "2027-03-01";
const one = {
	"rounds.csv": "start,label\n07:00,morning",
	"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-28,",
};
const planned = (workbook: Workbook) => hoursPlanned(plan(workbook), readWorkbook(workbook), DAY);

test("hands on of every step, for all people; the fire from lighting until the last pot was held", () => {
	// One kit: 20 min to prepare, 50 min of work, 20 min to store; the soak needs nobody.
	const hours = planned(unitWith({ boil_minutes_measured: 40, pots: 4 }, one));
	expectWithin(hours?.handsOn ?? 0, 1.5, 1e-9, "h");
	expect(hours?.atFires).toBeGreaterThan(0.6);
	// Two people share the kit's work and are both there.
	expectWithin(
		planned(unitWith({ workers_per_round: 2 }, one))?.handsOn ?? 0,
		(65 / 60) * 2,
		1e-9,
		"h",
	);
});

test("where the rounds wait for something there are no hours, and not 0", () => {
	expect(
		planned(smallUnit({ ...one, "steps.csv": "step,basis,minutes,hands_on\nsoak,load,long,no" })),
	).toBeUndefined();
});

test("hours done are those of rounds with an end, over midnight too", () => {
	const done = (rows: string) =>
		hoursDone(readWorkbook(smallUnit({ "rounds-done.csv": `date,start,ended,kits\n${rows}` })), [
			DAY,
		]);
	expect(
		done(`${DAY},07:00,08:30,A\n${DAY},23:00,00:30,A\n${DAY},14:00,,A\n2027-03-02,07:00,09:00,A`),
	).toEqual({
		hours: 3,
		timed: 2,
		rounds: 3,
	});
	expect(done("")).toEqual({ hours: 0, timed: 0, rounds: 0 });
});
