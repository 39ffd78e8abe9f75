import { expect, test } from "vitest";
import { demoWorkbook } from "../../../../src/ui/state/demoWorkbook.ts";
import { wordIn } from "../../../../src/ui/state/numberIn.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { farSafer } from "../../../../src/ui/subjects/week/farSafer.ts";

test("one line for the days and one for the whole plan of each measure that costs something, worst first, kits last", () => {
	const shown = farSafer(new Store(demoWorkbook()).state).map(({ row, days, ofDays }) => [
		wordIn(row.promise),
		days,
		ofDays,
	]);
	expect(shown).toEqual([
		["vinegar_litres", 7, 7],
		["boiled_for_rounds", 7, 7],
		["chlorine", 5, 7],
		["vinegar_litres", 0, 0],
		["kits_needed", 0, 0],
	]);
});
