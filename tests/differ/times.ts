import { plan } from "../../src/core/plan/plan.ts";
import { computedCsv } from "../../src/io/computedCsv.ts";
import { anyWorkbook } from "./anyWorkbook.ts";

/** How long a processor takes to open an invented workbook and look at all its sheets. */
export interface Time {
	readonly number: number;
	readonly ms: number;
	/** What takes longest of it: the plan, its problems or a sheet. */
	readonly longest: string;
	readonly longestMs: number;
}

/** Nothing of the workbook is known yet, as when it is opened. */
export function timeOf(number: number): Time {
	const workbook = anyWorkbook(number);
	const [made, planMs] = timed(() => plan(workbook));
	const parts: [string, number][] = [["the plan", planMs]];
	for (const table of Object.values(made.tables)) {
		const [, ms] = timed(() => computedCsv(table));
		parts.push([`\`${table.sheet.file}\``, ms]);
	}
	parts.push(["its problems", timed(() => made.problems)[1]]);
	const [longest, longestMs] = parts.reduce((a, b) => (a[1] >= b[1] ? a : b));
	return { number, ms: parts.reduce((sum, [, ms]) => sum + ms, 0), longest, longestMs };
}

/** What is made, and the milliseconds of a processor it takes: other programs do not count. */
function timed<T>(work: () => T): [T, number] {
	const before = process.cpuUsage();
	const made = work();
	const { user, system } = process.cpuUsage(before);
	return [made, (user + system) / 1000];
}
