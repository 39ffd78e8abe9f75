import { expect, test } from "vitest";
import { passedWords } from "../../../../src/ui/subjects/bench/passedWords.ts";
import { usedWords } from "../../../../src/ui/subjects/bench/usedWords.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

const checked = (kit: string, rounds = "") =>
	passedWords(
		smallUnit({
			"uses.csv": "at,kit,what,by,note\n2027-03-01 05:00,B,used,,",
			"rounds-done.csv": `date,start,ended,kits${rounds}`,
			"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,suction_holds,note,relief_opens,purpose,damage,checked_by
				2027-03-01 10:00,${kit},5,yes,yes,yes,yes,yes,,yes,after_round,no,Esi`,
		}),
		kit,
		"2027-03-01",
	);

// record.md: only the passed check after a round makes a kit ready that was used.
test("a kit that passed every test without a round is said not to be ready", () => {
	expect(checked("B")).toBe(
		"Kit B passed every test, and is not ready: it goes through a round first, and the check after it.",
	);
	expect(checked("B", "\n2027-03-01,07:00,09:30,B")).toBe("Kit B passed every test.");
	expect(checked("A")).toBe("Kit A passed every test.");
});

test("a use of a day to come is said to be one: until then the kit is still ready", () => {
	const at = { date: "2027-03-09", minutes: 540 };
	expect(usedWords("A", "used", at, "2027-03-02")).toContain("a day to come");
	expect(usedWords("A", "used", at, "2027-03-09")).toMatch(
		/^Kit A was used: .* It waits for a round\.$/,
	);
});
