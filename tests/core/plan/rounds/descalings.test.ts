import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { rowsOf } from "../../../../src/core/plan/rowsOf.ts";
import { DESCALE_STEP } from "../../../../src/core/rounds/timedSteps.ts";
import { runSheetSheet } from "../../../../src/core/sheets/runSheet.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import { unitWith } from "../../smallUnit.ts";

/** A unit so busy that every round of its three a day runs for certain. */
const BUSY = { births_per_day: 150, kits_used_per_100_births: 100, workers_per_round: 4 };
const ROUNDS_A_DAY = 3;

interface Done {
	readonly date: string;
	readonly round: string;
	readonly descaled: boolean;
}

/** The rounds of a plan in their order, and in which of them its run sheet descales. */
function roundsOf(settings: Record<string, string | number>, record: readonly string[]): Done[] {
	const made = plan(
		unitWith(settings, { "rounds-done.csv": ["date,start,kits,descaled", ...record].join("\n") }),
	);
	const rounds = new Map<string, Done>();
	for (const row of rowsOf(made, runSheetSheet)) {
		const [date, round, step] = [row.date, row.round, row.step].map(({ outcome }) =>
			outcome.ok ? String(outcome.value) : "",
		) as [string, string, string];
		const key = `${date} ${round}`;
		const descaled = rounds.get(key)?.descaled || step === DESCALE_STEP;
		rounds.set(key, { date, round, descaled });
	}
	return [...rounds.values()];
}

const STARTS = ["07:00", "14:00", "21:00"];
const rowOf = ({ date, descaled }: Done, at: number) =>
	`${date},${STARTS[at % ROUNDS_A_DAY]},A,${descaled ? "yes" : "no"}`;

test.each([
	[7, 7],
	[7, 5],
	[28, 7],
	[28, 10],
])(
	"plans of %d days, rolled on with their record: one descaling for every %d rounds done",
	(days, every) => {
		let start = "2027-03-01";
		const record: string[] = [];
		const all: boolean[] = [];
		for (let week = 0; week < 8; week++) {
			const rounds = roundsOf(
				{ ...BUSY, plan_start: start, plan_days: days, descale_every_rounds: every },
				record,
			);
			expect(rounds).toHaveLength(days * ROUNDS_A_DAY);
			start = addDays(start, days);
			// Of the fourth week nothing is done: the count stands still.
			if (week === 3) continue;
			all.push(...rounds.map(({ descaled }) => descaled));
			record.push(...rounds.map(rowOf));
		}
		const at = all.flatMap((descaled, round) => (descaled ? [round + 1] : []));
		expect(at).toEqual(
			Array.from({ length: Math.floor(all.length / every) }, (_, n) => every * (n + 1)),
		);
	},
);

test("a descaling that was missed is due in the very next round, and once", () => {
	const record = Array.from({ length: 9 }, (_, day) => `${addDays("2027-02-10", day)},07:00,A,no`);
	const rounds = roundsOf({ ...BUSY, descale_every_rounds: 7 }, record);
	expect(rounds.flatMap(({ descaled }, at) => (descaled ? [at] : []))).toEqual([0, 7, 14]);
});
