import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { unitWith } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

/** Every birth uses a kit; three kits are in service, and one person does six in the seven hours that a round has. */
const said = (...[settings, changes]: Parameters<typeof unitWith>) =>
	wholeProblems(plan(unitWith({ kits_used_per_100_births: 100, ...settings }, changes)).problems)
		.filter(({ code }) => code === "round-full-once-enough")
		.map(({ line, received, allowed }) => `${line}: ${received}, ${allowed}`);

const KITS = "kit,kind,status,ready_since,note";
const kits = (count: number) => ({
	"kits.csv": [KITS, ...Array.from({ length: count }, (_, i) => `K${i},bag set,in_service,,`)].join(
		"\n",
	),
});
/** Ten hours before the first round, seven before each of the others: the 95 of 100 quantiles of a Poisson count given that it is not 0. */
const NINE_AND_SEVEN = [
	"2: 550 minutes, at most 420 minutes",
	"3: 450 minutes, at most 420 minutes",
];

test.each<[string, Parameters<typeof unitWith>, string[]]>([
	["with as many as are needed every round ends in time", [{ births_per_day: 6 }], []],
	// 12 × 10 ÷ 24 = 5 kits are 9 at 95 of 100, 12 × 7 ÷ 24 = 3.5 are 7: 40 + 50 × 9 + 20 × 3 = 550, 40 + 50 × 7 + 20 × 3 = 450.
	["with as many as are needed two do not", [{ births_per_day: 12 }], NINE_AND_SEVEN],
	["two people are enough", [{ births_per_day: 12, workers_per_round: 2 }], []],
	["there are enough already", [{ births_per_day: 12 }, kits(40)], []],
	[
		"after each use there are no rounds",
		[{ births_per_day: 12, reprocessing: "after_each_use" }],
		[],
	],
	[
		"how many would be enough is not known",
		[{ births_per_day: 12, unmet_per_1000_uses: "few" }],
		[],
	],
	[
		"of the kits nothing can be read",
		[{ births_per_day: 12 }, { "kits.csv": `${KITS}\nA,bag set,perhaps,,` }],
		[],
	],
])("%s", (_, of, expected) => {
	expect(said(...of)).toEqual(expected);
});
