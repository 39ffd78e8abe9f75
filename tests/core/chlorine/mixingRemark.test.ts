import { expect, test } from "vitest";
import { mixingRemark } from "../../../src/core/chlorine/mixingRemark.ts";
import { answerOf } from "../answerOf.ts";

type Inputs = (typeof mixingRemark)["example"]["inputs"];

const right: Inputs = {
	strengthMadePct: 0.5,
	afterCarryInPct: 0.5,
	targetPct: 0.5,
	wantedPct: 0.5,
	kits: 3,
	ofLot: "",
};
const OVER = "More than 20 % over 0.5 %: use a finer measure or a larger volume.";
const UNDER =
	"Under 0.5 % after 3 wet kits: drain and dry them well, or choose yes under “Mixed stronger for wet kits”.";

test.each<[string, Partial<Inputs>, string]>([
	["as strong as wanted", {}, ""],
	["a fifth over", { strengthMadePct: 0.6, afterCarryInPct: 0.6 }, ""],
	["more than a fifth over", { strengthMadePct: 0.601, afterCarryInPct: 0.6 }, OVER],
	// calculations.md 5: more than 20 % over target; what wet kits ask for (methods.md 2) is no alarm.
	["far over, as wet kits ask for", { strengthMadePct: 0.7, wantedPct: 0.6 }, ""],
	["a fifth beyond what wet kits ask for", { strengthMadePct: 0.701, wantedPct: 0.6 }, OVER],
	[
		"a coarse jug, by the strength to mix still under a fifth",
		{ strengthMadePct: 0.6095, wantedPct: 0.509 },
		OVER,
	],
	["under it after the last kit", { afterCarryInPct: 0.499 }, UNDER],
	["what the lot asks for", { ofLot: "Look at lot L1." }, "Look at lot L1."],
	[
		"everything at once, in this order",
		{ ofLot: "Look at lot L1.", strengthMadePct: 0.7, afterCarryInPct: 0.4 },
		`Look at lot L1. ${OVER} ${UNDER}`,
	],
])("%s", (_what, of, words) => {
	expect(answerOf(mixingRemark, { ...right, ...of })).toBe(words);
});
