import { expect, test } from "vitest";
import { valueIn } from "../../../src/core/outcome.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { plannedUnit } from "../../../src/core/plan/plannedUnit.ts";
import { minutesKitsWait } from "../../../src/core/plan/water/hearthFigures.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../expectWithin.ts";
import { codesOf, rowsOf } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

/** Of two days why it is not known how many kits are renewed, and how many are used. */
function waits(...births: string[]): string[] {
	const days = births.map((count, i) => `2027-03-0${i + 1},${count},`);
	const files = { "births.csv": ["date,births,note", ...days].join("\n") };
	return rowsOf(plan(unitWith({ plan_days: 2 }, files)), "day-plan.csv").map((day) =>
		[day.kits_expired_expected, day.kits_used_expected].map((cell) => codesOf(cell)).join(" / "),
	);
}

test.each([
	["6", "7", [" / ", " / "]],
	["two", "7", [" / bad-cell", " / "]],
	["two", "three", ["bad-cell / bad-cell", "bad-cell / bad-cell"]],
])("kits renewed go by the days that can be read, births %s and %s", (first, second, wanted) => {
	expect(waits(first, second)).toEqual(wanted);
});

const MINUTES = 1440;
const STARTS = [420, 840, 1260];

// methods.md, "Policy": once a kit waits, one used later than its water takes before a round waits for the next.
test.each([
	["within hours", {}],
	["within two days", { cooling_per_hour: 0.05, boiled_water_hours: 72 }],
])("rounds whose water is cool %s have the kits that were used in time for it", (_, settings) => {
	const births = [0, 20, 0, 5];
	const days = births.map((count, i) => `2027-03-0${i + 1},${count},`);
	const planned = plannedUnit(
		readWorkbook(
			unitWith(
				{ plan_days: births.length, boil_for: "after_use", ...settings },
				{
					"births.csv": ["date,births,note", ...days].join("\n"),
					// None in service, so none goes out of date.
					"kits.csv": "kit,kind,status,ready_since,note",
				},
			),
		),
	);
	if (!planned.ok) throw new Error("the small unit has a first day");
	const water = valueIn(minutesKitsWait(planned.value.unit) as never) as unknown as number;
	/** Kits used up to a minute, one for ten births, evenly over each day. */
	const usedUntil = (minute: number) =>
		births.reduce(
			(sum, count, day) => sum + (count / 10) * Math.min(1, Math.max(0, minute / MINUTES - day)),
			0,
		);
	planned.value.days.forEach(({ rounds }, day) => {
		const at = [(STARTS[2] as number) - MINUTES, ...STARTS].map((start) =>
			usedUntil(day * MINUTES + start - water),
		);
		(valueIn(rounds)?.kits ?? []).forEach((kits, i) => {
			expectWithin(kits, (at[i + 1] as number) - (at[i] as number), 1e-9, "kits");
		});
		expect(valueIn(rounds)?.kits).toHaveLength(STARTS.length);
	});
});

test("rounds of a day with a figure of its own go by the forecast of the evening before; with water to wait for, by the last that is forecast", () => {
	const register = Array.from(
		{ length: 28 },
		(_, day) => `2027-02-${String(day + 1).padStart(2, "0")},${2 + (day % 7)},`,
	);
	const levels = (settings: Record<string, string>) => {
		const planned = plannedUnit(
			readWorkbook(
				unitWith(
					{ plan_days: 4, ...settings },
					{
						"records.csv": ["date,births,kits_used", ...register].join("\n"),
						"births.csv": "date,births,note\n2027-03-02,5,\n2027-03-03,5,",
					},
				),
			),
		);
		const days = planned.ok ? planned.value.days : [];
		const means = days.map(({ level }) => level && valueIn(level)?.mean);
		return days.map(({ rounds }) => {
			const mean = valueIn(rounds)?.forecast?.level.mean;
			return mean === undefined ? undefined : means.indexOf(mean);
		});
	};
	expect(levels({ boil_for: "every_round" })).toEqual([0, 0, undefined, 3]);
	expect(levels({ boil_for: "after_use" })).toEqual([0, 0, 0, 3]);
});
