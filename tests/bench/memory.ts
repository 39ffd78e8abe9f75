import { withTexts } from "../../src/core/edit/withTexts.ts";
import type { Plan } from "../../src/core/plan/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { longUnit } from "./longUnit.ts";
import { heapMb, type Measured, measure, report } from "./measure.ts";
import { wholePlan } from "./wholePlan.ts";

/**
 * Heap that one plan holds (after a collection, its sheets not looked at; then all of
 * them looked at), and that a plan takes on the way: what is made and let go at once.
 */
const DAYS = [7, 31, 366];
const KEPT = 32;
const rows: Measured[] = [];

for (const days of DAYS) {
	const workbook = longUnit(days);
	let run = 0;
	const edited = (): Workbook =>
		withTexts(workbook, "births.csv", [{ row: 2, column: "births", text: String(++run / 7) }]);
	const timed = measure(`${days} days: one edit → new plan`, () => wholePlan(edited()));
	rows.push({
		...timed,
		what: `${days} days: held by a plan`,
		heapMb: held(() => wholePlan(edited())),
	});
	rows.push({
		...timed,
		what: `${days} days: held by a plan with every sheet looked at`,
		heapMb: held(() => lookedAt(wholePlan(edited()))),
	});
	rows.push({ ...timed, what: `${days} days: made on the way to a plan`, heapMb: made(edited) });
}
report("memory", rows);
console.log(`  largest resident size ${Math.round(process.resourceUsage().maxRSS / 1000)} MB`);

/** Heap of one of several plans that are all still there. */
function held(work: () => Plan): number {
	work();
	const before = heapMb();
	const kept = Array.from({ length: KEPT }, work);
	const after = heapMb();
	return (after - before) / kept.length;
}

/** Heap that grew while one plan was made; the most of several, because a collection may come between. */
function made(edited: () => Workbook): number {
	const grown = Array.from({ length: KEPT }, () => {
		const before = heapMb();
		wholePlan(edited());
		return process.memoryUsage().heapUsed / 1e6 - before;
	});
	return Math.max(...grown);
}

function lookedAt(made: Plan): Plan {
	for (const table of Object.values(made.tables)) void table.rows.length;
	return made;
}
