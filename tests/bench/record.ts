import { withRow } from "../../src/core/edit/withRow.ts";
import { monthTable } from "../../src/core/plan/record/monthTable.ts";
import { longRecord } from "./longRecord.ts";
import { type Measured, measure, report } from "./measure.ts";
import { wholePlan } from "./wholePlan.ts";

/**
 * A record that has grown for years: one more line written down → the new plan, and the
 * report of a month. Work should grow with the lines and no faster.
 */
const FULL = { uses: 5_000, rounds: 3_000, journal: 10_000 };
const TENTH = { uses: 500, rounds: 300, journal: 1_000 };
const LIMIT_MS = 50;
const rows: Measured[] = [];

for (const [name, size] of [
	["a tenth", TENTH],
	["5,000 uses, 3,000 rounds, 10,000 journal lines", FULL],
] as const) {
	const workbook = longRecord(size);
	let run = 0;
	rows.push(
		measure(`${name}: one more use → plan`, () => {
			run = (run + 1) % 60;
			const at = `2027-02-28 23:${String(run).padStart(2, "0")}`;
			return wholePlan(withRow(workbook, "uses.csv", { at, kit: "A", what: "used" }));
		}),
		measure(`${name}: report of a month`, () =>
			monthTable(workbook, "2027-02").rows.map(({ done }) => done),
		),
	);
}
const [tenthPlan, tenthMonth, fullPlan, fullMonth] = rows.map(({ ms }) => ms) as [
	number,
	number,
	number,
	number,
];
const inTime = (what: string, found: number) =>
	({ what, found, unit: "ms", bound: "at most", limit: LIMIT_MS }) as const;
const growth = (what: string, found: number) =>
	({ what, found, unit: "times", bound: "at most", limit: 1.5 }) as const;
report("record", rows, [
	inTime("A long record: one more use → plan", fullPlan),
	inTime("A long record: report of a month", fullMonth),
	growth("A line's cost in the plan, long record ÷ a tenth", fullPlan / tenthPlan / 10),
	growth("A line's cost in the report, long record ÷ a tenth", fullMonth / tenthMonth / 10),
]);
