import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { amounts } from "../../../../src/ui/subjects/begin/firstAnswer.ts";
import { unitWith } from "../../../core/smallUnit.ts";

test("a plan of one day is of one day", () => {
	const of = (days: number) => amounts(new Store(unitWith({ plan_days: days })).state);
	expect(of(1)).toMatch(/^To prepare for on this one day: \d.* L of chlorine solution/);
	expect(of(7)).toMatch(/^To prepare for in these 7 days: \d/);
});
