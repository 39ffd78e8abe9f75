import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { itemsAgainstPlan } from "../../../../src/core/plan/record/itemsAgainstPlan.ts";
import { itemsOverDays } from "../../../../src/core/plan/record/itemsOverDays.ts";
import { roundsOverDays } from "../../../../src/core/plan/record/roundsOverDays.ts";
import { usageLearned } from "../../../../src/core/plan/record/usageLearned.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { daysOfMonth } from "../../../../src/core/values/isoMonth.ts";
import { contentOf } from "../../contentOf.ts";
import { smallUnit } from "../../smallUnit.ts";
import { wholeProblems } from "../../wholeProblems.ts";

const usage = (...lines: string[]) => ({
	"usage.csv": ["item,basis,quantity", "powder,round,2", ...lines].join("\n"),
});
const liquidUsed = (changes: Record<string, string>) =>
	contentOf(plan(smallUnit(changes)), "supply-use.csv", "item", "expected").find(
		([item]) => item === "liquid",
	);

// calculations.md 8: every consumable is a row of usage; chlorine comes from section 5.
test("a line for the chlorine product in use is not counted, and that is said", () => {
	expect(liquidUsed(usage("liquid,day,5"))).toEqual(liquidUsed(usage()));
	const found = wholeProblems(plan(smallUnit(usage("liquid,day,5"))).problems).filter(
		({ code }) => code === "use-of-product",
	);
	expect(found).toMatchObject([
		{ weight: "advice", file: "usage.csv", line: 3, column: "item", received: "liquid" },
	]);
	expect(found[0]?.message).toContain("belongs under “Other chlorine solution on the ward”");
	const other = plan(smallUnit(usage("tablets,day,5"))).problems;
	expect(other.map(({ code }) => code)).not.toContain("use-of-product");
});

test("no figure is learned for it, and it is held against the doses alone", () => {
	const days = daysOfMonth("2027-01").slice(3);
	const read = readWorkbook(
		smallUnit({
			...usage("liquid,day,5"),
			"lots.csv": "item,lot,quantity,received_on\nliquid,L1,100,2027-01-01",
			"rounds-done.csv": [
				"date,start,kits,product,lot,litres",
				...days.flatMap((day) => [`${day},07:00,A,liquid,L1,7`, `${day},14:00,A,liquid,L1,7`]),
			].join("\n"),
			"journal.csv": [
				"day,item,lot,entry,quantity",
				...days.map((day) => `${day},liquid,L1,issue,2`),
			].join("\n"),
		}),
	);
	const item = itemsOverDays(read, days).find((each) => each.item === "liquid");
	if (!item) throw new Error("no liquid");
	expect(usageLearned(read, item, roundsOverDays(read, days), days.length)).toBeUndefined();
	// 28 days with two rounds of 7 L at 0.5 % from 3.5 %: 1 L each.
	expect(itemsAgainstPlan(read, days)).toMatchObject([{ item: "liquid", used: 56, planned: 56 }]);
});
