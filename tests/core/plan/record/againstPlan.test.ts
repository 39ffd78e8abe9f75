import { describe, expect, test } from "vitest";
import { betweenByChance } from "../../../../src/core/counts/betweenByChance.ts";
import { daysOfMeasure } from "../../../../src/core/plan/record/daysOfMeasure.ts";
import { itemsAgainstPlan } from "../../../../src/core/plan/record/itemsAgainstPlan.ts";
import { needsShare } from "../../../../src/core/plan/record/needsShare.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { unitWith } from "../../smallUnit.ts";

const march = daysOfMonth("2027-03");
const readOf = (files: Record<string, string>, settings: Record<string, string | number> = {}) =>
	readWorkbook(unitWith(settings, files));

test("a day that is planned, recorded, both or neither", () => {
	const { tables } = readOf({
		"past-plans.csv": `date,measure_of,expected,set_aside
			2027-03-01,births,6,10
			2027-03-02,births,6.5,`,
	});
	const done = new Map([
		["2027-03-01", 0],
		["2027-03-03", 4],
	]);
	expect(daysOfMeasure(tables, "births", march.slice(0, 4), done)).toEqual([
		{ date: "2027-03-01", done: 0, expected: 6, setAside: 10 },
		{ date: "2027-03-02", done: undefined, expected: 6.5, setAside: undefined },
		{ date: "2027-03-03", done: 4, expected: undefined, setAside: undefined },
		{ date: "2027-03-04", done: undefined, expected: undefined, setAside: undefined },
	]);
});

// By hand from the Poisson chances, e.g. of 6: at most 1 has 0.0174, at most 2 0.0620; at most 10 has 0.9574, at most 11 0.9799.
test.each([
	[6, 0.95, { low: 2, high: 11 }],
	[0.5, 0.95, { low: 0, high: 2 }],
	[0, 0.95, { low: 0, high: 0 }],
	// At most 0 has 0.0498, at most 1 0.1991; at most 6 has 0.9665.
	[3, 0.9, { low: 1, high: 6 }],
] as const)("of %d expected, %d of the time", (expected, sureness, between) => {
	expect(betweenByChance(expected, sureness)).toEqual(between);
});

describe("needs that found no kit ready, of all needs", () => {
	const uses = (...lines: string[]) => ({ "uses.csv": ["at,kit,what", ...lines].join("\n") });
	const used = (count: number) =>
		Array.from({ length: count }, (_, at) => `2027-03-05 0${at}:00,A,used`);

	test.each([
		[
			"one of one is beyond what is accepted",
			uses("2027-03-05 10:00,,none_ready"),
			[1, 1, 1, "more"],
		],
		["none of four", uses(...used(4)), [0, 4, 1, "cannot_tell"]],
		[
			"none on the seven days after the last line, before the next",
			uses("2027-02-28 10:00,A,used", "2027-04-01 10:00,A,used"),
			[0, 0, 7, "cannot_tell"],
		],
		[
			// A unit that opens a kit at every birth (methods.md 4) needs one at each.
			"a kit that was opened is a need, as it is one of the plan's uses",
			uses("2027-03-05 10:00,A,opened"),
			[0, 1, 1, "cannot_tell"],
		],
		// The life is 7 days: from the 5th until the 8th, the last line, uses were written down.
		[
			"the register's kits count on days on which uses are kept",
			{
				...uses("2027-03-05 10:00,,none_ready", "2027-03-08 10:00,A,used"),
				"records.csv": "date,births,kits_used\n2027-03-06,9,3\n2027-03-20,9,50",
			},
			[1, 5, 4, "more"],
		],
	] as const)("%s", (_what, files, expected) => {
		const found = needsShare(readOf(files, { unmet_per_1000_uses: 1 }), march);
		expect(found && [found.unmet, found.needs, found.days, found.verdict]).toEqual(expected);
		expect(found?.between === undefined).toBe(found?.needs === 0);
	});

	test("beside no share that is accepted nothing can be told", () => {
		const found = needsShare(
			readOf(uses("2027-03-05 10:00,,none_ready"), { unmet_per_1000_uses: "few" }),
			march,
		);
		expect([found?.accepted, found?.verdict]).toEqual([undefined, "cannot_tell"]);
	});

	test("so many accepted that none of 40 is fewer, beyond chance", () => {
		const files = { ...uses(...used(1)), "records.csv": "date,births,kits_used\n2027-03-05,90,40" };
		const found = needsShare(readOf(files, { unmet_per_1000_uses: 100 }), march);
		// None of 40: up to 1 − 0.025^(1/40).
		expectWithin(found?.between?.high ?? Number.NaN, 1 - 0.025 ** (1 / 40), 1e-12, "share");
		expect(found?.verdict).toBe("fewer");
	});

	test("nothing written down of uses: not known", () => {
		expect(needsShare(readOf({}), march)).toBeUndefined();
	});
});

describe("what was used of an item beside what the plan takes for the work done", () => {
	const rounds = (rest = "A B,,L1,7") =>
		[
			"date,start,kits,product,lot,litres",
			`2027-03-02,07:00,${rest}`,
			`2027-03-03,07:00,${rest}`,
		].join("\n");
	const files = {
		"usage.csv": `item,basis,quantity
			powder,round,2
			powder,kit,3
			tablets,load,1
			vinegar,day,0.5
			clean gloves,kit,1`,
		"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
			tablets,tablet,1.5,g_per_tablet,,,,no
			liquid,liquid,3.5,pct_w_v,,0,,yes`,
		"treatments.csv": "kind,piece,method\nbag set,mask,boiling\nbag set,clean gloves,single_use",
		"rounds-done.csv": rounds(),
		"lots.csv": `item,lot,quantity,received_on
			powder,P1,500,2027-01-20
			tablets,T1,200,2027-01-20
			vinegar,V1,30,2027-01-20
			liquid,L1,10,2027-01-20
			clean gloves,C1,50,2027-01-20
			gauze squares,G1,90,2027-01-20`,
		"journal.csv": `day,item,lot,entry,quantity,note
			2027-03-02,clean gloves,C1,issue,4,
			2027-03-02,gauze squares,G1,issue,40,
			2027-03-02,vinegar,V1,issue,14,
			2027-03-02,powder,P1,issue,12,
			2027-03-04,powder,P1,issue,8,
			2027-03-04,tablets,T1,issue,8,
			2027-03-04,liquid,L1,issue,2.5,
			2027-03-05,liquid,L1,count,7,`,
	};
	const against = (
		changes: Record<string, string> = {},
		settings: Record<string, string | number> = {},
	) =>
		itemsAgainstPlan(readOf({ ...files, ...changes }, settings), march).map(
			({ item, used, planned, low, high }) => [
				item,
				...[used, planned, low, high].map((value) => Number(value.toPrecision(9))),
			],
		);

	test("all lines of an item together; product by its doses; loads, pieces thrown away and what has no line left out", () => {
		// Two rounds and four kits: 2 × 2 + 4 × 3 = 16, and 20 issued, the largest time 12.
		// Liquid: 2.5 issued and half a litre less by the count; 7 L at 0.5 % from 3.5 % take 1 L a round.
		// Vinegar by the day: the record goes from the 2nd to the 5th, and 4 × 0.5 is planned.
		expect(against()).toEqual([
			["vinegar", 14, 2, 0, 28],
			["liquid", 3, 2, 0.5, 5.5],
			["powder", 20, 16, 8, 32],
		]);
		const without = (file: string) => against({ [file]: "kind,piece,method" });
		expect(without("treatments.csv")).toContainEqual(["clean gloves", 4, 4, 0, 8]);
		const boiled = files["treatments.csv"].replaceAll("single_use", "boiling");
		expect(against({ "treatments.csv": boiled })).toContainEqual(["clean gloves", 4, 4, 0, 8]);
	});

	test("the product is left out where the ward makes other solution of it", () => {
		const floors = (litres: string) => ({
			"ward-solution.csv": `use,litres_per_day,strength_pct\nfloors,${litres},0.5`,
		});
		for (const litres of ["10", "much"])
			expect(against(floors(litres)).map(([item]) => item)).toEqual(["vinegar", "powder"]);
		expect(against({ "ward-solution.csv": "use,litres_per_day,strength_pct" })).toEqual(against());
	});

	// calculations.md: no number is invented to fill a hole, never 0.
	test("an item of which one line's use is not known is left out, and not counted without it", () => {
		const named = (line: string, settings = {}) =>
			against({ "usage.csv": `${files["usage.csv"]}\n${line}` }, settings).map(([item]) => item);
		const others = ["vinegar", "liquid"];
		expect(named("powder,worker_round,1", { workers_per_round: 2 })).toEqual([...others, "powder"]);
		expect(named("powder,worker_round,1", { workers_per_round: "two" })).toEqual(others);
		expect(named("powder,round,some")).toEqual(others);
		expect(named(",round,some")).toEqual([]);
	});

	test("without a round, and of a product whose lot is not named, nothing is said to be planned", () => {
		expect(against({ "rounds-done.csv": "date,start,kits" })).toEqual([]);
		expect(against({ "rounds-done.csv": rounds("A B,,,7") }).map(([item]) => item)).toEqual([
			"vinegar",
			"powder",
		]);
		const chlorine = files["chlorine.csv"].replaceAll("yes", "no");
		expect(against({ "chlorine.csv": chlorine }).map(([item]) => item)).toEqual([
			"vinegar",
			"powder",
		]);
	});
});
