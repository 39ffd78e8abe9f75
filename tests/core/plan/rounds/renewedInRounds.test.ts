import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

/** In which rounds of two days kit A is renewed, ready since the day given. */
function renewed(
	readySince: string,
	settings: Record<string, string | number> = {},
	files: Record<string, string> = {},
): string[] {
	const kits = `kit,kind,status,ready_since,note\nA,bag set,in_service,${readySince},\nB,bag set,in_service,,`;
	const made = plan(unitWith({ plan_days: 2, ...settings }, { "kits.csv": kits, ...files }));
	return contentOf(made, "run-sheet.csv", "renew", "date", "round").flatMap(([kit, ...round]) =>
		kit === "A" ? [round.join(" ")] : [],
	);
}

test.each<[string, string, Record<string, string | number>, string[]]>([
	["before the plan", "2027-02-21", {}, []],
	["with the first day", "2027-02-22", {}, ["2027-03-01 night"]],
	["with the last day of the plan", "2027-02-23", {}, ["2027-03-02 night"]],
	["with the last day of three", "2027-02-24", { plan_days: 3 }, ["2027-03-03 night"]],
	["with the only day", "2027-02-22", { plan_days: 1 }, ["2027-03-01 night"]],
	["after the plan", "2027-02-24", {}, []],
	[
		"with the first day, renewed the day after",
		"2027-02-22",
		{ renew_kits: "when_expired" },
		["2027-03-02 morning"],
	],
	[
		"with the last day, and back only a day after its round",
		"2027-02-23",
		{ method: "autoclave", sterile_life_days: 7, autoclave_turnaround_hours: 24 },
		["2027-03-01 night"],
	],
	[
		"the day after the plan, back only a day after its round",
		"2027-02-24",
		{ method: "autoclave", sterile_life_days: 7, autoclave_turnaround_hours: 24 },
		["2027-03-02 night"],
	],
	["on a day that nobody can read", "soon", {}, []],
])("a kit whose life ends %s (%s)", (_, readySince, settings, rounds) => {
	expect(renewed(readySince, settings)).toEqual(rounds);
});

test("a night's round as long as its kits take: past midnight the kit is renewed in the round before", () => {
	const steps = {
		"steps.csv":
			"step,basis,minutes,hands_on\nmake ready,round,100,yes\nwash,kit,50,yes\nsoak,load,20,no",
	};
	// One kit takes 170 minutes from 21:00, two take 220.
	expect(renewed("2027-02-22", { births_per_day: 1 }, steps)).toEqual(["2027-03-01 night"]);
	expect(renewed("2027-02-22", { births_per_day: 30 }, steps)).toEqual(["2027-03-01 afternoon"]);
});

test("where only one of the kinds is sent away its kits are back a day after their round", () => {
	const two = {
		"kind-use.csv": "kind,uses_per_100_births\nbag set,8\nsuction set,8",
		"kits.csv":
			"kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-23,\nB,bag set,in_service,,\nC,suction set,in_service,,",
		"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction set,bulb,1",
		"treatments.csv": "kind,piece,method,note\nbag set,bag,autoclave,",
	};
	const away = { sterile_life_days: 7, autoclave_turnaround_hours: 24 };
	expect(renewed("2027-02-23", away, two)).toEqual(["2027-03-01 night"]);
});

/** Two kinds of kit in chlorine, or one of them sent to an autoclave; what each round of the days renews. */
function renewedOfTwo(kits: readonly string[], changes: Record<string, string | null>): string[] {
	const files = {
		"kind-use.csv": "kind,uses_per_100_births\nbag set,8\nsuction set,8",
		"kits.csv": `kit,kind,status,ready_since,note\n${kits.join("\n")}`,
		"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction set,bulb,1",
		"rounds.csv": "start,label\n07:00,morning\n19:00,evening",
		...changes,
	};
	const made = plan(unitWith({ plan_days: 4 }, files));
	return contentOf(made, "run-sheet.csv", "date", "round", "renew").flatMap(([day, round, kit]) =>
		kit ? [`${day} ${round} ${kit}`] : [],
	);
}

const TWO_KINDS = [
	// Seven days from 02-25 the last is 03-04; three sterile weeks from 02-10 it is 03-03.
	"A1,bag set,in_service,2027-02-25,",
	"A2,bag set,in_service,2027-02-28,",
	"B1,suction set,in_service,2027-02-26,",
	"B2,suction set,in_service,2027-02-28,",
	"B3,suction set,in_service,2027-02-10,",
];
const SENT = { "treatments.csv": "kind,piece,method,note\nsuction set,bulb,autoclave," };

// calculations.md 3 (renew_kits, in_time) and methods.md 1 (an autoclaved kit has a sterile life of its own).
test.each<[string, string | null]>([
	["each planned for", "kind,uses_per_100_births\nbag set,8\nsuction set,8"],
	["that share one number of uses", null],
])("of two kinds %s each keeps and comes back by its own method", (_, kindUse) => {
	// In chlorine a kit is back in the evening, from the autoclave a day after its round.
	expect(renewedOfTwo(TWO_KINDS, { ...SENT, "kind-use.csv": kindUse })).toEqual([
		"2027-03-02 evening B3",
		"2027-03-04 evening A1",
	]);
});

test("kits of two kinds that end together do not lie on each other", () => {
	const together = ["A,bag set,in_service,2027-02-25,", "B,suction set,in_service,2027-02-25,"];
	for (const rows of [together, together.toReversed()])
		expect(renewedOfTwo(rows, {})).toEqual(["2027-03-04 evening A, B"]);
	// Counted as one kind, one of the two is renewed earlier, so that they no longer end together.
	const alike = { "kind-use.csv": null };
	expect(renewedOfTwo(together, alike)).toEqual(["2027-03-02 evening A", "2027-03-04 evening B"]);
});

test("where the hours of the autoclave cannot be read no round is told to send a kit for renewal", () => {
	const files = {
		"kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-20,",
	};
	const renewedWith = (hours: string) =>
		contentOf(
			plan(
				unitWith(
					{ method: "autoclave", autoclave_turnaround_hours: hours, sterile_life_days: 9 },
					files,
				),
			),
			"run-sheet.csv",
			"renew",
		)
			.flat()
			.filter(Boolean);
	expect([renewedWith("24"), renewedWith("many")]).toEqual([["A"], []]);
});

test("the first round runs where a kit waits for it, and only then where none does", () => {
	const onlyIf = (readySince: string) => {
		const kits = `kit,kind,status,ready_since,note\nA,bag set,in_service,${readySince},`;
		return contentOf(plan(unitWith({}, { "kits.csv": kits })), "run-sheet.csv", "only_if")[0];
	};
	expect([onlyIf(""), onlyIf("2027-02-28")]).toEqual([[""], ["a kit waits"]]);
});

// record.md, state of a kit: a round done and not checked yet waits for its check, not for another round.
test("a kit that only waits for the test after its round makes no round run", () => {
	const used = "at,kit,what\n2027-03-01 01:00,A,used";
	const onlyIf = (more: Record<string, string>) => {
		const kits = `kit,kind,status,ready_since,note
			A,bag set,in_service,2027-02-28,
			B,bag set,in_service,2027-02-28,`;
		const unit = unitWith({}, { "kits.csv": kits, "uses.csv": used, ...more });
		return contentOf(plan(unit), "run-sheet.csv", "only_if")[0];
	};
	const done = "date,start,ended,kits\n2027-03-01,02:00,03:30,A";
	expect(onlyIf({})).toEqual([""]);
	expect(onlyIf({ "rounds-done.csv": done })).toEqual(["a kit waits"]);
});

test("the round after the plan ends past its midnight as those before it do", () => {
	// Kept until 3 March: the round of that night ends only on the 4th.
	const late = { "rounds.csv": "start,label\n23:00,night" };
	expect(renewed("2027-02-24", {}, late)).toEqual(["2027-03-02 night"]);
});

test("a step that ends at midnight ends on the next day", () => {
	const files = {
		"rounds.csv": "start,label\n23:00,",
		"steps.csv": "step,basis,minutes,hands_on\nwash,round,40,yes\nrinse,round,20,yes",
	};
	const made = plan(unitWith({ plan_days: 1 }, files));
	expect(contentOf(made, "run-sheet.csv", "ends", "ends_on")).toEqual([
		["23:40", ""],
		["00:00", "2027-03-02"],
	]);
});
