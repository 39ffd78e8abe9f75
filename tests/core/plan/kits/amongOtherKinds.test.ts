import { describe, expect, test } from "vitest";
import type { Reprocessing } from "../../../../src/core/kits/reprocessing.ts";
import { unmetPer1000 } from "../../../../src/core/kits/unmetPer1000.ts";
import { problemsOf, valueIn } from "../../../../src/core/outcome.ts";
import { dayDemands } from "../../../../src/core/plan/dayDemands.ts";
import { amongOtherKinds } from "../../../../src/core/plan/kits/amongOtherKinds.ts";
import { coverFigures, type KindCover } from "../../../../src/core/plan/kits/coverFigures.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { flatDay } from "../../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { outcomeOf } from "../../answerOf.ts";
import { unitWith } from "../../smallUnit.ts";

const reprocessing = {
	kind: "after_each_use",
	usesPerDay: [3, 5],
	hourShares: flatDay,
	hands: { people: 1, workMinutes: 120, aloneMinutes: 30 },
	readyLifeDays: 7,
} as const;
const kind = (usesPerDay: number) => ({ kits: 4, usesPerDay, days: 7 });

/** One person who works two hours on each kit does 12 a day: 4 of this kind and 8 of others. */
test.each([
	[[7.9], true],
	[[8], false],
	[[4, 3.9], true],
	[[4, 4], false],
])("4 a day of this kind, %o of others: done %s", (uses, done) => {
	const others = uses.map(kind);
	expect(outcomeOf(amongOtherKinds, { reprocessing, own: kind(4), others }).ok).toBe(done);
});

test.each([
	["the part of all uses", 4, [1, 3], 0.5],
	["a kind that nobody uses", 0, [1], 0],
	["kinds that nobody uses", 0, [0], 0],
])("share: %s", (_, uses, ofOthers, share) => {
	const [own, others] = [kind(uses), ofOthers.map(kind)];
	expect(outcomeOf(amongOtherKinds, { reprocessing, own, others })).toMatchObject({
		value: { ...reprocessing, others: { share, own, kinds: others } },
	});
});

describe("25 births a day, 30 of 100 use a kit, one person and 110 minutes", () => {
	const settings = {
		reprocessing: "after_each_use",
		births_per_day: 25,
		ready_life_days: 90,
		delivery_beds: 1,
		spare_kits: 1,
	};
	const KINDS = "kind,piece,count\nset,bag,1\nbulb,bulb,1";
	const kits = ["set", "bulb"].flatMap((kind) => [1, 2, 3, 4].map((n) => `${kind}${n},${kind}`));
	const KITS = [
		"kit,kind,status,ready_since,note",
		...kits.map((kit) => `${kit},in_service,,`),
	].join("\n");
	const coverOf = (uses: string, births = 25) => {
		const files = { "kinds.csv": KINDS, "kits.csv": KITS, "kind-use.csv": uses };
		const planned = plannedUnit(
			readWorkbook(unitWith({ ...settings, births_per_day: births }, files)),
		);
		if (!planned.ok) throw new Error("the unit has no days");
		const { unit } = planned.value;
		return coverFigures(unit, dayDemands(unit, ["2027-03-01", "2027-03-02"])).kinds;
	};
	const USE = "kind,uses_per_100_births";
	const unmet = (kind: KindCover | undefined, count: number) =>
		unmetPer1000(count, valueIn((kind as KindCover).reprocessing) as Reprocessing);

	/** calculations.md 3: as simulated there for one kind; halved, by a simulation (tests/reference/sharedQueue.test.ts). */
	test("one kind, and halves of two: 4 kits of each leave 4.49 unmet and are not enough", () => {
		const [one] = coverOf(`${USE}\nset,30`);
		expect(valueIn((one as KindCover).reprocessing)).not.toHaveProperty("others");
		[32.7, 11.7, 4.2].forEach((per1000, i) => {
			expectWithin(unmet(one, 4 + i), per1000, 0.02 * per1000, "per 1,000");
		});
		for (const kind of coverOf(`${USE}\nset,15\nbulb,15`)) {
			expectWithin(unmet(kind, 4), 4.49, 0.05, "per 1,000");
			expectWithin(unmet(kind, 5), 0.98, 0.02, "per 1,000");
			expect(valueIn(kind.cover)?.byRisk).toBe(5);
		}
	});

	test("the fewer of the uses are of a kind, the fewer of its kits are waited for", () => {
		const [many, few] = coverOf(`${USE}\nset,25\nbulb,5`);
		expect(unmet(many, 4)).toBeGreaterThan(4.49);
		expect(unmet(few, 4)).toBeLessThan(4.49);
	});

	test("the order of rows decides nothing, down to the last digit", () => {
		const rows = ["set,15", "bulb,5", "catheter,2", "mask,3"];
		const [given, turned] = [rows, rows.toReversed()].map((uses) => {
			const kinds = coverOf([USE, ...uses].join("\n"));
			return valueIn((kinds.find(({ name }) => name === "set") as KindCover).reprocessing);
		});
		expect(given).toHaveProperty("others.kinds.length", 3);
		expect(turned).toEqual(given);
	});

	test("each kind could be done, all of them cannot: it is said of each", () => {
		for (const { cover } of coverOf(`${USE}\nset,15\nbulb,15`, 44))
			expect(problemsOf(cover.outcome).map(({ code }) => code)).toEqual(["too-few-hands"]);
	});
});
