import { rowsOf } from "../core/planCells.ts";
import { largeUnit, type Size } from "./largeUnit.ts";
import { type Goal, type Measured, report, summary } from "./measure.ts";
import { wholePlan } from "./wholePlan.ts";

/**
 * Units that have very many of one thing, and of all things at once: the plan, which every
 * edit waits for, and the sheet that takes longest, which is worked out when looked at. Each
 * once, in a workbook that was never seen before, as when it is opened.
 */
const SIZES: readonly (readonly [what: string, half: Size, whole: Size])[] = [
	["items", { items: 1000 }, { items: 2000 }],
	["lots", { items: 10, lots: 2000 }, { items: 10, lots: 4000 }],
	[
		"journal lines",
		{ items: 10, lots: 100, journal: 5000 },
		{ items: 10, lots: 100, journal: 10_000 },
	],
	["kits of 50 kinds", { kits: 50, kinds: 25 }, { kits: 100, kinds: 50 }],
	["rounds a day", { rounds: 12 }, { rounds: 24 }],
	["days", { days: 183 }, { days: 366 }],
	["days of a register", { register: 1825 }, { register: 3650 }],
];
const ALL: Size = Object.assign({}, ...SIZES.map(([, , whole]) => whole), {
	items: 2000,
	lots: 4000,
	journal: 10_000,
});
const WANTED_MS = 5000;
const MOST_GROWTH = 3;
const rows: Measured[] = [];
const goals: Goal[] = [];

for (const [what, half, whole] of SIZES) {
	// What runs for the first time is not quick yet, and very many come by more of the program than half of them.
	for (const size of [half, whole]) wholePlan(largeUnit({ ...size, days: 3 }));
	const [small, large] = [timed(half, `half as many ${what}`), timed(whole, what)];
	rows.push(small, large);
	goals.push({
		what: `Growth: twice as many ${what}, time ÷ before`,
		found: large.ms / Math.max(small.ms, 20),
		unit: "times",
		bound: "at most",
		limit: MOST_GROWTH,
	});
}
const all = timed(ALL, "all at once");
rows.push(all, ...sheetsOf(ALL));
goals.push({
	what: "Growth: all at once, the plan",
	found: all.ms,
	unit: "ms",
	bound: "at most",
	limit: WANTED_MS,
});
report("growth", rows, goals);

function timed(size: Size, what: string): Measured {
	const workbook = largeUnit(size);
	const start = performance.now();
	wholePlan(workbook);
	return summary(`${what}: ${Object.values(size).join(", ")}`, [performance.now() - start]);
}

/** The sheets that take longest, each in a plan of its own. */
function sheetsOf(size: Size): Measured[] {
	const made = wholePlan(largeUnit(size));
	return Object.keys(made.tables)
		.map((file) => {
			const start = performance.now();
			rowsOf(made, file as never);
			return summary(`all at once, ${file} looked at`, [performance.now() - start]);
		})
		.sort((a, b) => b.ms - a.ms)
		.slice(0, 5);
}
