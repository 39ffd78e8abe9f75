import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const CODES = [
	"hands-overloaded",
	"hands-busy",
	"too-few-hands",
	"round-past-midnight",
	"mixing-not-marked",
	"step-lacking",
	"short-soak",
];

/** What is said of the rounds of a unit: code, place, what was found and what is allowed. */
const said = (...of: Parameters<typeof unitWith>) =>
	wholeProblems(plan(unitWith(...of)).problems)
		.filter(({ code }) => CODES.includes(code))
		.map(({ code, file, line, column, received, allowed }) =>
			[code, file, line, column, received, allowed].join(" | "),
		);
const steps = (...lines: string[]) => ({
	"steps.csv": ["step,basis,minutes,hands_on,method", ...lines].join("\n"),
});
const rounds = (...lines: string[]) => ({ "rounds.csv": ["start,label", ...lines].join("\n") });
const one = { reprocessing: "after_each_use" };
const TREATMENTS = "kind,piece,method,note";
const thrown = {
	"treatments.csv": [
		TREATMENTS,
		...["bag", "valve", "mask"].map((piece) => `bag set,${piece},single_use,`),
	].join("\n"),
};
const MIX = "mix,round,20,yes,chlorine";
const BOIL = "boil,load,20,no,";
const SOAK = "soak,load,20,no,";

const LATE = rounds("07:00,a", "08:30,b");
const WASH = "wash,kit,5,yes,";
const DRY = "rinse and dry,round,5,yes,";
const LACKING = "step-lacking | steps.csv |  | step | 2 steps | steps that wash, rinse and dry";
const NOT_WET = "step-lacking | steps.csv |  | step | 1 steps | steps that wash and dry";
const NOT_MARKED =
	"mixing-not-marked | steps.csv |  | method | no step only for chlorine before the soak | the step that mixes, once a round, only for chlorine";
const shortSoak = (found: string, least: number) =>
	`short-soak | steps.csv |  | minutes | ${found} | at least ${least} minutes`;
const hands = (code: string, percent: number) =>
	`${code} | unit.csv |  | worker_hours_a_day | ${percent} of 100 minutes | at most 80 of 100`;
const tooFew = (allowed: string) =>
	`too-few-hands | unit.csv |  | workers_per_round | 1 in a round | ${allowed}`;

describe("of the steps of a round", () => {
	test.each<[string, Parameters<typeof unitWith>, string[]]>([
		["all is there", [{}], []],
		["washing, rinsing and drying lack", [{}, steps(MIX, SOAK)], [LACKING, LACKING, LACKING]],
		["what is thrown away needs none", [{}, { ...steps(MIX, SOAK), ...thrown }], []],
		[
			"where only masks are thrown away the rest needs them",
			[{}, { ...steps(MIX, SOAK), "treatments.csv": `${TREATMENTS}\nbag set,mask,single_use,` }],
			[LACKING, LACKING, LACKING],
		],
		["what is boiled is not rinsed", [{ method: "boiling" }, steps(BOIL)], [NOT_WET, NOT_WET]],
		["a list that cannot be read says nothing", [{}, steps("wash,kit,many,yes,")], []],
		["nor does an empty one", [{}, steps()], []],
		[
			"nor one for pieces of which the treatment cannot be read",
			[{}, { ...steps(MIX, SOAK), "treatments.csv": `${TREATMENTS}\nbag set,mask,magic,` }],
			[],
		],
		["what mixes is not marked", [{}, steps("mix and wash,kit,5,yes,", SOAK, DRY)], [NOT_MARKED]],
		[
			"a load of another method is no soak",
			[{}, steps("mix and wash,kit,5,yes,", "boil,load,20,no,boiling", DRY)],
			[shortSoak("no step counted by load", 20)],
		],
		[
			"how often is descaled cannot be read",
			[{ descale_every_rounds: "x" }, steps("mix and wash,kit,5,yes,", SOAK, DRY)],
			[],
		],
		["one soak is long enough", [{}, steps(MIX, WASH, "first soak,load,10,no,", SOAK, DRY)], []],
		[
			"no soak is",
			[{ soak_minutes: 30 }, steps(MIX, WASH, "first soak,load,10,no,", SOAK, DRY)],
			[shortSoak("20 minutes", 30)],
		],
		[
			"none is counted by load",
			[{ soak_minutes: 30 }, steps(MIX, WASH, "soak,round,40,no,", DRY)],
			[shortSoak("no step counted by load", 30)],
		],
		[
			"how long it must be cannot be read",
			[{ soak_minutes: "long" }, steps(MIX, WASH, "soak,load,1,no,", DRY)],
			[],
		],
		[
			"steam is no soak",
			[{ method: "steam", soak_minutes: 30 }, steps(WASH, "steam,load,10,no,", DRY)],
			[],
		],
	])("%s", (_, of, expected) => {
		expect(said(...of)).toEqual(expected);
	});
});

describe("of the hands", () => {
	test.each<[string, Parameters<typeof unitWith>, string[]]>([
		// 0.6 kits of 110 minutes are 66 minutes a day.
		[
			"all of their time is no more than there is",
			[{ ...one, worker_hours_a_day: 1.1 }],
			[hands("hands-busy", 100)],
		],
		["four fifths are no reason", [{ ...one, worker_hours_a_day: 1.375 }], []],
		["more than that are", [{ ...one, worker_hours_a_day: 1.37 }], [hands("hands-busy", 81)]],
		[
			"nobody knows of how many births",
			[{ ...one, worker_hours_a_day: 1.1, births_per_day: "" }],
			[],
		],
		[
			"the busiest day counts, of those that can be read",
			[
				{ ...one, worker_hours_a_day: 1.2 },
				{ "births.csv": "date,births,note\n2027-03-02,9,\n2027-03-03,many," },
			],
			[hands("hands-overloaded", 138)],
		],
		["no steps are known", [{ ...one, worker_hours_a_day: 1 }, steps()], []],
		["nobody knows how many hours", [{ ...one, worker_hours_a_day: "x" }], []],
		["more people make the round end in time", [{}, LATE], [tooFew("at least 5")]],
		[
			"no number of people does",
			[{ kits_used_per_100_births: 100, births_per_day: 50 }, rounds("07:00,a", "07:30,b")],
			[tooFew("a longer gap between rounds")],
		],
		["how sure the plan is cannot be read", [{ plan_confidence: "most" }, LATE], []],
		[
			"the kits cannot be read",
			[{}, { ...LATE, "kits.csv": "kit,kind,status\nA,bag set,perhaps" }],
			[],
		],
		[
			"a round ends after midnight",
			[{ births_per_day: 1 }, rounds("07:00,a", "22:30,")],
			["round-past-midnight | rounds.csv | 3 | start | 22:30 | "],
		],
	])("%s", (_, of, expected) => {
		expect(said(...of)).toEqual(expected);
	});
});
