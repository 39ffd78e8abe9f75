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
	[
		"a fifth over the strength that is mixed for wet kits",
		{ strengthMadePct: 0.72, wantedPct: 0.6 },
		"",
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
