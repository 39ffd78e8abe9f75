import { expect, test } from "vitest";
import { lotRemark } from "../../../src/core/chlorine/lotRemark.ts";
import type { Preparation } from "../../../src/core/chlorine/measureOut.ts";
import { answerOf } from "../answerOf.ts";

type Inputs = (typeof lotRemark)["example"]["inputs"];

const preparation = (quantity: number, measure: Preparation["measure"] = "mL"): Preparation => ({
	litres: 5,
	quantity,
	measure,
	waterLitres: 4,
	strengthMadePct: 0.5,
});
const lot: Inputs = {
	preparation: preparation(800),
	left: 800,
	nextLot: "",
	assumedAgeDays: null,
};
const LITTLE = "Too little for one preparation:";
const ORDER = "Order now, and make up no more than it is enough for.";
const AGE =
	"Its age is not known: it counts as 60 days old. Look for the day it was made on the bottle.";

test.each<[string, Partial<Inputs>, string]>([
	["just enough", {}, ""],
	["not known how much is left", { left: null }, ""],
	[
		"too little, and no other lot",
		{ left: 799.9 },
		`${LITTLE} 799 mL left, 800 mL needed. ${ORDER}`,
	],
	[
		"too little, and another lot",
		{ left: 0, nextLot: "B" },
		`${LITTLE} 0 mL left, 800 mL needed. Use lot B, by its own line, and order.`,
	],
	[
		"too little powder",
		{ left: 3, preparation: preparation(40, "g") },
		`${LITTLE} 3 g left, 40 g needed. ${ORDER}`,
	],
	[
		"too few tablets",
		{ left: 1, preparation: preparation(2, "tablet") },
		`${LITTLE} 1 tablet left, 2 tablets needed. ${ORDER}`,
	],
	["of an age only assumed", { assumedAgeDays: 60 }, AGE],
	["both", { assumedAgeDays: 60, left: 7 }, `${AGE} ${LITTLE} 7 mL left, 800 mL needed. ${ORDER}`],
])("%s", (_what, change, remark) => {
	expect(answerOf(lotRemark, { ...lot, ...change })).toBe(remark);
});
