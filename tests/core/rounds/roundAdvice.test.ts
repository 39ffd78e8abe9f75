import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { codesOf, problemCodes, rowsOf, valueIn } from "../planCells.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

const problemsOf = (code: string, ...of: Parameters<typeof unitWith>) =>
	plan(unitWith(...of)).problems.filter((p) => p.code === code);
const rounds = (...starts: string[]) => ({ "rounds.csv": ["start,label", ...starts].join("\n") });

test("rounds that fit need no advice", () => {
	expect(
		problemCodes(plan(unitWith({ heat_kw: 3, births_per_day: 5, count_every_days: 366 }))),
	).toEqual([]);
});

describe("a round longer than the gap to the next", () => {
	// Of rounds that run after the long gap, three kits are enough: 20 + 3 × 50 + 20 + 20 = 210 minutes; 90 to the next.
	/** With two kits a round takes 160 minutes at most. */
	const twoKits = {
		"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,,\nB,bag set,in_service,,",
	};
	const tight = rounds("07:00,early", "08:30,late");

	test("is named once, with the minutes it needs and has", () => {
		expect(problemsOf("round-too-long", {}, tight)).toEqual([
			{
				weight: "error",
				code: "round-too-long",
				file: "rounds.csv",
				line: 2,
				column: "start",
				received: "210 minutes",
				allowed: "at most 90 minutes",
				message:
					"early at 07:00 needs 210 minutes with the kits it prepares for, and has 90 until the next round begins.",
			},
		]);
		expect(plan(unitWith({}, tight)).made).toBe(false);
	});

	test.each([
		[1, "at least 5", "With 5 people the round would take 90 minutes and end in time."],
		[3, "at least 5", "With 5 people the round would take 90 minutes and end in time."],
	])("with %d people it is said how many would do", (people, allowed, message) => {
		expect(problemsOf("too-few-hands", { workers_per_round: people }, tight)).toMatchObject([
			{
				file: "unit.csv",
				column: "workers_per_round",
				received: `${people} in a round`,
				allowed,
				message,
			},
		]);
	});

	test("with as many people as that it fits", () => {
		const made = plan(unitWith({ workers_per_round: 5 }, tight));
		expect([made.made, problemCodes(made, "error")]).toEqual([true, []]);
	});

	test("or that no number would do", () => {
		expect(problemsOf("too-few-hands", {}, rounds("07:00,early", "07:30,late"))).toMatchObject([
			{
				allowed: "a longer gap between rounds",
				message: expect.stringMatching(/^No number/),
			},
		]);
	});

	test("a round just as long as its gap fits", () => {
		const madeWith = (late: string) =>
			plan(unitWith({}, { ...twoKits, ...rounds("07:00,early", late) })).made;
		expect(madeWith("09:40,late")).toBe(true);
		expect(madeWith("09:39,late")).toBe(false);
	});

	test("with a descaling it may be too long although the plan stands", () => {
		// 160 of 180 minutes; 30 more for bath and rinse.
		const made = plan(
			unitWith(
				{
					births_per_day: 9,
					descale_every_rounds: 1,
					descale_minutes: 20,
					descale_rinse_minutes: 10,
				},
				{ ...twoKits, ...rounds("07:00,early", "10:00,late") },
			),
		);
		expect(made.made).toBe(true);
		expect(made.problems.find((p) => p.code === "round-too-long")?.received).toBe("190 minutes");
		const refused = rowsOf(made, "run-sheet.csv").filter((row) => !row.starts?.outcome.ok);
		expect(refused.length).toBeGreaterThan(0);
		for (const row of refused) expect(codesOf(row.starts)).toEqual(["round-too-long"]);
	});
});

describe("a round that ends after midnight", () => {
	test("is spoken of once, whatever the days", () => {
		expect(
			problemsOf("round-past-midnight", { births_per_day: 1 }, rounds("07:00,", "22:30,late")),
		).toEqual([
			expect.objectContaining({
				weight: "advice",
				file: "rounds.csv",
				line: 3,
				received: "22:30",
				message:
					"late at 22:30 ends after midnight, at 01:10; it belongs to the day it starts on. See who is on duty.",
			}),
		]);
	});

	test("is spoken of once although it ends later on a busy day", () => {
		const busy = {
			...rounds("07:00,", "22:30,late"),
			"births.csv": "date,births,note\n2027-03-03,60,",
		};
		const made = plan(unitWith({ births_per_day: 1 }, busy));
		const ends = rowsOf(made, "run-sheet.csv").flatMap((row) => [valueIn(row.ends)]);
		expect(new Set(ends).has("02:00")).toBe(true);
		expect(made.problems.filter((p) => p.code === "round-past-midnight")).toHaveLength(1);
	});

	test("at midnight sharp it is still that day", () => {
		expect(
			problemsOf("round-past-midnight", { births_per_day: 1 }, rounds("07:00,", "21:20,")),
		).toEqual([]);
		expect(
			problemsOf("round-past-midnight", { births_per_day: 1 }, rounds("07:00,", "21:21,")),
		).toHaveLength(1);
	});
});

describe("a soak that is too short", () => {
	const steps = (line: string) =>
		problemCodes(plan(smallUnit({ "steps.csv": `step,basis,minutes,hands_on\n${line}` })));
	test.each([
		["20 minutes by load", "soak,load,20,no", false],
		["19 minutes by load", "soak,load,19,no", true],
		["20 minutes, but not by load", "soak,round,20,no", true],
	])("%s", (_what, line, advised) => {
		expect(steps(line).includes("short-soak")).toBe(advised);
	});
});

describe("hands, after each use", () => {
	// 110 minutes for each kit; 10 kits of 100 births.
	const busy = (settings: Record<string, string | number>) =>
		problemsOf("hands-busy", { reprocessing: "after_each_use", ...settings });
	const overloaded = (settings: Record<string, string | number>) =>
		problemsOf("hands-overloaded", { reprocessing: "after_each_use", ...settings });

	test("6 births a day: nothing to say", () => {
		expect([...busy({}), ...overloaded({})]).toEqual([]);
	});

	test("few hours for it: an advice, then a problem, with the share", () => {
		// 0.6 × 110 = 66 minutes of 75, of 60; two people have twice as many.
		expect(busy({ worker_hours_a_day: 1.25 })).toMatchObject([
			{ weight: "advice", column: "worker_hours_a_day", received: "88 of 100 minutes" },
		]);
		expect(overloaded({ worker_hours_a_day: 1 })).toMatchObject([
			{ weight: "error", received: "110 of 100 minutes" },
		]);
		expect(busy({ worker_hours_a_day: 1.25, workers_per_round: 2 })).toEqual([]);
	});

	test("a kit left alone in the soak takes less of their time", () => {
		expect(busy({ worker_hours_a_day: 1.25, soak_alone: "yes" })).toEqual([]);
	});

	test("more than anybody can do: no number of kits is enough, and it is said why", () => {
		const made = plan(unitWith({ reprocessing: "after_each_use", births_per_day: 140 }));
		expect(codesOf(rowsOf(made, "day-plan.csv")[0]?.kits_needed)).toEqual(["too-few-hands"]);
	});

	test("in rounds nothing of it", () => {
		expect(problemsOf("hands-overloaded", { worker_hours_a_day: 1 })).toEqual([]);
	});
});

test("which unused kits a round renews stands at its first step", () => {
	// A became ready on the 27th of February: its last day is the 6th of March; B's is the day after.
	const rows = rowsOf(plan(smallUnit()), "run-sheet.csv");
	const renewed = rows.flatMap((row) =>
		valueIn(row.renew)
			? [[valueIn(row.date), valueIn(row.round), valueIn(row.step), valueIn(row.renew)]]
			: [],
	);
	expect(renewed).toEqual([
		["2027-03-06", "night", "prepare", "A"],
		["2027-03-07", "night", "prepare", "B"],
	]);
});

test("renewing only what is out of date is advised against, once, where a unit does", () => {
	expect(problemsOf("renewed-when-expired", {})).toEqual([]);
	expect(problemsOf("renewed-when-expired", { renew_kits: "when_expired" })).toMatchObject([
		{ weight: "advice", file: "unit.csv", column: "renew_kits", allowed: "in_time" },
	]);
	expect(
		problemsOf("renewed-when-expired", {
			renew_kits: "when_expired",
			reprocessing: "after_each_use",
		}),
	).toEqual([]);
});
