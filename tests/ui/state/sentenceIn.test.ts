import { expect, test } from "vitest";
import { nameFigure } from "../../../src/core/calculation.ts";
import { answer, noAnswer } from "../../../src/core/outcome.ts";
import { nowhere, problem } from "../../../src/core/problem.ts";
import { waitsFor } from "../../../src/ui/format/waitsFor.ts";
import { sentenceIn } from "../../../src/ui/state/sentenceIn.ts";
import { Store } from "../../../src/ui/state/store.ts";
import { storekeeperLists } from "../../../src/ui/subjects/store/storekeeperLists.ts";
import { smallUnit } from "../../core/smallUnit.ts";

const why = (message: string) =>
	problem(nowhere, { code: "late-lot", received: "", allowed: "", message });

test.each([
	[undefined, ""],
	[answer(1), ""],
	[noAnswer(why("It was due on 2027-03-03."), why("No kit.")), "It was due on Wed 3 Mar."],
])("what %j waits for", (outcome, words) => {
	expect(waitsFor(outcome)).toBe(words);
});

test.each([
	["", ""],
	["not tested since 2027-03-01 08:30", "not tested since Mon 1 Mar 08:30"],
])("the sentence in a cell with “%s”", (text, words) => {
	expect(sentenceIn(nameFigure("Why", text))).toBe(words);
});

test("a storekeeper reads no day as files write it", () => {
	const { state } = new Store(smallUnit({ "lots.csv": "" }));
	const read = JSON.stringify(storekeeperLists(state));
	expect(read).toContain("Runs out on Mon 1 Mar, before an order can arrive");
	expect(read).not.toMatch(/\d{4}-\d\d-\d\d/);
});
