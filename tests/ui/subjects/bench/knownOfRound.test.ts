import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { knownOfRound } from "../../../../src/ui/subjects/bench/knownOfRound.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

// The small unit's round for two kits: 07:00, 20 + 2 × 50 + 20 + 20 minutes, over at 09:40.
const known = (time: string, uses = "") => {
	const [hours = 0, minutes = 0] = time.split(":").map(Number);
	const { state } = new Store(smallUnit({ "uses.csv": `at,kit,what,by,note${uses}` }));
	return knownOfRound(state, { date: "2027-03-01", minutes: hours * 60 + minutes });
};

test("a round ended by now, and once the plan has it over, when it is over", () => {
	const over = known("12:00").ended;
	expect(over > "07:20" && over < "12:00").toBe(true);
	expect(known("07:20")).toMatchObject({ start: { minutes: 7 * 60 }, ended: "07:20" });
	// record.md: the disinfected life starts at the end of the round; a later end would lengthen it.
	expect(known("12:59").ended).toBe(over);
});

test("a kit used after the round began was not in it, in whatever letters it is written", () => {
	const uses = "\n2027-03-01 06:50,A,used,,\n2027-03-01 07:10,b,used,,";
	expect([...known("08:00", uses).usedSince]).toEqual(["B"]);
	// Of a kit written down by its day alone nobody knows; it counts at the day's end.
	expect([...known("08:00", "\n2027-03-01,C,used,,").usedSince]).toEqual(["C"]);
	expect(known("08:00").usedSince.size).toBe(0);
});
