import { conflictProblem } from "../../src/core/merge/conflictProblem.ts";
import { mergeCopies } from "../../src/core/merge/mergeCopies.ts";
import { unitLine } from "../../src/core/plan/district/unitLine.ts";
import { unitMonths } from "../../src/core/plan/district/unitMonths.ts";
import { unitNeeds } from "../../src/core/plan/district/unitNeeds.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { failuresOverDays } from "../../src/core/plan/record/failuresOverDays.ts";
import { hoursDone, hoursPlanned } from "../../src/core/plan/record/hoursPlanned.ts";
import { itemsAgainstPlan } from "../../src/core/plan/record/itemsAgainstPlan.ts";
import { itemsOverDays } from "../../src/core/plan/record/itemsOverDays.ts";
import { spanTable } from "../../src/core/plan/record/monthTable.ts";
import { roundsOverDays } from "../../src/core/plan/record/roundsOverDays.ts";
import { usageLearned } from "../../src/core/plan/record/usageLearned.ts";
import { actsBetween } from "../../src/core/plan/today/actsBetween.ts";
import { safetyTruths } from "../../src/core/plan/today/safetyTruths.ts";
import { stopProblems } from "../../src/core/plan/today/stopProblems.ts";
import { readWorkbook } from "../../src/core/read/readWorkbook.ts";
import { addDays } from "../../src/core/values/date.ts";
import { everything } from "../core/contentOf.ts";
import { START } from "./anyCell.ts";
import { anyWorkbook } from "./anyWorkbook.ts";
import { twoCopies } from "./twoCopies.ts";

/** Days of the record looked back on. */
const BACK = 40;
const SPAN = Array.from({ length: 2 * BACK }, (_, i) => addDays(START, i - BACK));
const WHOSE = { unit: "Any unit", path: "any.zip" } as const;

/** What the core makes of an invented workbook, part by part: its plan, its days, its record, its line in a district, and two copies of it together. */
export function inventedPlan(number: number): Record<string, unknown> {
	const workbook = anyWorkbook(number);
	const made = plan(workbook);
	const read = readWorkbook(workbook);
	const rounds = roundsOverDays(read, SPAN);
	const items = itemsOverDays(read, SPAN);
	const [ours, theirs] = twoCopies(number, workbook);
	const together = mergeCopies(ours, theirs);
	const [from, until] = [
		{ date: addDays(START, -1), minutes: 0 },
		{ date: addDays(START, 3), minutes: 0 },
	];
	return {
		...everything(made),
		today: [
			safetyTruths(made, read, START),
			stopProblems(made.problems),
			actsBetween(made, read, from, until),
			SPAN.map((day) => hoursPlanned(made, read, day)),
		],
		record: [
			spanTable(read, SPAN).rows.map(outcomes),
			rounds,
			items,
			itemsAgainstPlan(read, SPAN),
			items.map((item) => usageLearned(read, item, rounds, SPAN.length)),
			failuresOverDays(read.tables, SPAN),
			hoursDone(read, SPAN),
		],
		district: [
			outcomes(unitLine(WHOSE, made, read, made.problems)),
			unitMonths(WHOSE, read).map(outcomes),
			unitNeeds(WHOSE, made).map(outcomes),
		],
		together: [
			together.workbook,
			together.changes,
			together.conflicts.map(conflictProblem),
			together.conflicts,
		],
	};
}

/** The values of a row, without where they come from. */
function outcomes(row: Readonly<Record<string, { readonly outcome: unknown }>>): unknown[] {
	return Object.entries(row).map(([key, { outcome }]) => [key, outcome]);
}
