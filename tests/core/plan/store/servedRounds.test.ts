import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { itemsAgainstPlan } from "../../../../src/core/plan/record/itemsAgainstPlan.ts";
import { isServed, servedRounds } from "../../../../src/core/plan/store/servedRounds.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

/** Lot L1 holds 10 L of 3.5 %, which does not fade: 7 L of 0.5 % take 1 L, a preparation of 5.5 L measured out 0.79 L. */
const unit = (settings: Record<string, string | number>, ...rounds: string[]) =>
	unitWith(
		{ product_drawn_by: "rounds", ...settings },
		{
			"rounds-done.csv": ["date,start,kits,product,lot,litres", ...rounds].join("\n"),
			"journal.csv": "day,item,lot,entry,quantity\n2027-02-20,powder,P1,issue,1",
		},
	);
const round = (start: string, litres = "", date = "2027-02-20") =>
	`${date},${start},A,liquid,L1,${litres}`;
const onceADay = { solution_made: "each_day", solution_life_hours: 10 };

const onHand = (settings: Record<string, string | number>, ...rounds: string[]) =>
	contentOf(plan(unit(settings, ...rounds)), "stock.csv", "lot", "on_hand").find(
		([lot]) => lot === "L1",
	)?.[1];

// calculations.md 5: each_day is one preparation a day with a round, at most solution_life_hours; record.md: a round draws what it took.
describe("rounds of one day", () => {
	test.each<[string, Record<string, string | number>, string[], number]>([
		["each with its own solution", {}, [round("07:00"), round("14:00")], 10 - 2 * 0.79],
		["with solution made once", onceADay, [round("14:00"), round("07:00")], 10 - 0.79],
		["made once, and litres written", onceADay, [round("07:00", "7"), round("14:00")], 9],
		["made anew, as the litres say", onceADay, [round("07:00", "7"), round("14:00", "7")], 8],
		["after its hours", onceADay, [round("07:00"), round("17:00")], 10 - 2 * 0.79],
		[
			"the hours counted from the last that was made",
			onceADay,
			[round("05:00"), round("15:00"), round("23:00")],
			10 - 2 * 0.79,
		],
		["on two days", onceADay, [round("21:00"), round("01:00", "", "2027-02-21")], 10 - 2 * 0.79],
		[
			"hours that nobody can read: as if each made its own, so that there is not less than is said",
			{ ...onceADay, solution_life_hours: "long" },
			[round("07:00"), round("14:00")],
			10 - 2 * 0.79,
		],
	])("%s", (_what, settings, rounds, left) => {
		expect(Number(Number(onHand(settings, ...rounds)).toFixed(9))).toBe(left);
	});

	test("a round that was served asks for no lot, and is no hole in what was used", () => {
		const served = unit(onceADay, round("07:00", "7"), "2027-02-20,14:00,A,liquid,,");
		expect(plan(served).problems.filter(({ code }) => code === "round-draws-nothing")).toEqual([]);
		const read = readWorkbook(served);
		expect([...servedRounds(read)]).toEqual([3]);
		expect(itemsAgainstPlan(read, ["2027-02-20"])).toMatchObject([
			{ item: "liquid", used: 1, planned: 1 },
		]);
	});

	test("whether the day's solution serves a round to come", () => {
		const read = readWorkbook(unit(onceADay, round("07:00")));
		const at = (hour: number, date = "2027-02-20") => isServed(read, { date, minutes: hour * 60 });
		expect([6, 7, 8, 16, 17].map((hour) => at(hour))).toEqual([false, false, true, true, false]);
		expect(at(8, "2027-02-21")).toBe(false);
		expect(
			isServed(readWorkbook(unit({}, round("07:00"))), { date: "2027-02-20", minutes: 600 }),
		).toBe(false);
	});
});
