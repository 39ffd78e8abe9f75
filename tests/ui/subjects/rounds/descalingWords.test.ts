import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { descalingWords } from "../../../../src/ui/subjects/rounds/descalingWords.ts";
import { unitWith } from "../../../core/smallUnit.ts";

function wordsOf(...rounds: string[]): string {
	const unit = unitWith(
		{ plan_days: 7, descale_every_rounds: 7 },
		{ "rounds-done.csv": ["date,start,kits,descaled", ...rounds].join("\n") },
	);
	return descalingWords(new Store(unit).state);
}

// record.md: what falls due is said by the record, of the plan's own days too.
test("a descaling of the plan's own week is known, and the rounds after it are counted", () => {
	const before = ["2027-02-20,07:00,A,no", "2027-02-21,07:00,A,no"];
	expect(wordsOf(...before)).toMatch(/^No descaling is written down; 2 rounds/);
	const descaled = "2027-03-02,07:00,A,yes";
	expect(wordsOf(...before, descaled, "2027-03-03,07:00,A,no")).toMatch(
		/^Last descaled on Tue 2 Mar 2027, 1 round ago\. The next one comes about/,
	);
	const six = [1, 2, 3].flatMap((day) => [
		`2027-03-0${day},07:00,A,no`,
		`2027-03-0${day},14:00,A,no`,
	]);
	expect(wordsOf(...six)).toContain("The next one is due in the next round that runs.");
});
