import { describe, expect, test } from "vitest";
import { leastUnmetPer1000, unmetPer1000 } from "../../../../src/core/kits/unmetPer1000.ts";
import { valueIn } from "../../../../src/core/outcome.ts";
import { withCounts } from "../../../../src/core/plan/dayFigures.ts";
import { changes } from "../../../../src/core/plan/kits/changes.ts";
import { coverFigures } from "../../../../src/core/plan/kits/coverFigures.ts";
import { DaysTried } from "../../../../src/core/plan/kits/daysTried.ts";
import { Lever } from "../../../../src/core/plan/kits/lever.ts";
import { leversTable } from "../../../../src/core/plan/kits/leversTable.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { unitWith } from "../../smallUnit.ts";

const register = [
	"date,births,kits_used",
	...Array.from(
		{ length: 20 },
		(_, day) => `2027-02-${String(day + 1).padStart(2, "0")},${4 + (day % 3)},1`,
	),
].join("\n");
const kinds = `kind,piece,count
	small,bag,1
	large,bag,1`;
const kits = `kit,kind,status,ready_since,note
	A,small,in_service,,
	B,small,in_service,,
	C,large,in_service,,
	D,large,in_service,,`;
const uses = `kind,uses_per_100_births,beds,spares
	small,10,,
	large,3,,`;

const units: Record<string, Workbook> = {
	"kits renewed in time": unitWith({ ready_life_days: 3 }),
	"kits that go out of date": unitWith({ ready_life_days: 1, renew_kits: "when_expired" }),
	"births by the register": unitWith({ ready_life_days: 3 }, { "records.csv": register }),
	"water boiled once a kit waits": unitWith({ boil_for: "after_use", ready_life_days: 3 }),
	"two kinds": unitWith(
		{ ready_life_days: 3 },
		{ "kinds.csv": kinds, "kits.csv": kits, "kind-use.csv": uses },
	),
};

function tryAll(workbook: Workbook) {
	const planned = valueIn({ outcome: plannedUnit(readWorkbook(workbook)) });
	if (!planned) throw new Error("the unit has no days");
	const { unit } = planned;
	const days = withCounts(unit, planned.days);
	const cover = coverFigures(unit, days);
	const tried = new DaysTried(days);
	return {
		levers: changes(unit).map((change) => new Lever(change, unit, tried, cover)),
		rows: leversTable(unit, days, cover).rows,
	};
}

describe.each(Object.entries(units))("%s", (_, workbook) => {
	const { levers, rows } = tryAll(workbook);
	const [now] = levers as [Lever];

	test("what is known sooner of a change is what its whole plan says of uses alone, of several kinds once its rounds are known, and never more than goes unmet", () => {
		expect(levers.length).toBeGreaterThan(15);
		for (const lever of levers)
			for (const kind of now.cover.kinds.keys()) {
				const least = lever.leastUnmet(kind);
				const kits = valueIn(lever.kits(kind)) as number;
				const reprocessing = valueIn(lever.kind(kind).reprocessing);
				if (!reprocessing) continue;
				expect(least).toBeGreaterThan(0);
				const byUses = leastUnmetPer1000(kits, reprocessing);
				const isOnly = now.cover.kinds.length === 1;
				expect(isOnly ? least : lever.leastUnmetInRounds(kind)).toBe(byUses);
				expect(least).toBeLessThanOrEqual(byUses);
				// The rounds are known by now.
				expect(lever.leastUnmet(kind)).toBe(byUses);
				expect(least * (1 - 1e-9)).toBeLessThanOrEqual(unmetPer1000(kits, reprocessing));
			}
	});

	test("of all hours the one shown is the one that spares most", () => {
		for (const [kind, { name }] of now.cover.kinds.entries()) {
			const hours = levers.flatMap((lever) => {
				const reprocessing = valueIn(lever.kind(kind).reprocessing);
				if (!lever.change.oneOfMany || !reprocessing) return [];
				const unmet = unmetPer1000(valueIn(lever.kits(kind)) as number, reprocessing);
				return [{ unmet, change: lever.change.name }];
			});
			const least = Math.min(...hours.map(({ unmet }) => unmet));
			const ofKind = rows.filter((row) => valueIn(row.kind) === name);
			const words = ofKind.map((row) => valueIn(row.change) ?? "");
			expect(words.filter((change) => change.endsWith("instead"))).toEqual([
				hours.find(({ unmet }) => unmet === least)?.change,
			]);
		}
	});
});

/** Fortnights that are calm and busy by turns, of which less is known each day ahead. */
const turning = [
	"date,births,kits_used",
	...Array.from({ length: 84 }, (_, day) => {
		const births = Math.floor(day / 14) % 2 === 0 ? 2 : 12;
		return `${addDays("2026-12-07", day)},${births},`;
	}),
].join("\n");

test.each([
	["with figures of the unit's own", "date,births,kits_used"],
	["by the forecast, which is less sure each week", turning],
])("rounds worked out once for days that are alike are those of each day, %s", (_, records) => {
	const births = ["1,9", "2,9", "3,2", "5,9", "6,9", "7,2"].map((day) => `2027-03-0${day},`);
	const workbook = unitWith(
		{ plan_days: 20 },
		{ "births.csv": ["date,births,note", ...births].join("\n"), "records.csv": records },
	);
	const planned = valueIn({ outcome: plannedUnit(readWorkbook(workbook)) });
	if (!planned) throw new Error("the unit has no days");
	const { unit, days } = planned;
	expect(valueIn(new DaysTried(days).roundsBy(unit))).toEqual(
		days.map(({ rounds }) => valueIn(rounds)),
	);
});

test("a change after which not even a round with one kit ends before the next is known for none before it is worked out", () => {
	const steps =
		"step,basis,minutes,hands_on,method\nprepare,round,20,yes,chlorine\nwash,kit,310,yes,chlorine";
	const { levers, rows } = tryAll(unitWith({}, { "steps.csv": steps }));
	const [now, ...others] = levers as [Lever, ...Lever[]];
	const unfit = others.filter(({ couldFit }) => !couldFit);
	expect(now.couldFit).toBe(true);
	expect(unfit.length).toBeGreaterThan(0);
	expect(unfit.length).toBeLessThan(others.length);
	for (const lever of unfit) {
		expect(lever.kind(0).reprocessing.outcome.ok).toBe(false);
		expect(rows.map((row) => valueIn(row.change))).not.toContain(lever.change.name);
	}
});
