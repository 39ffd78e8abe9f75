import { expect, test } from "vitest";
import { Store } from "../../../../src/ui/state/store.ts";
import { knownOfRound } from "../../../../src/ui/subjects/bench/knownOfRound.ts";
import { smallUnit, unitWith } from "../../../core/smallUnit.ts";

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

// calculations.md 5: solution made each_day is one preparation a day; a later round of the day makes none.
test("litres are proposed where the round makes solution, and not where the day's serves it", () => {
	const litres = (solution_made: string, done = "") => {
		const files = { "rounds-done.csv": `date,start,ended,kits,litres${done}` };
		const { state } = new Store(unitWith({ solution_made, solution_life_hours: 10 }, files));
		return knownOfRound(state, { date: "2027-03-01", minutes: 8 * 60 }).litres;
	};
	const earlier = "\n2027-03-01,03:00,04:30,A,5.5";
	expect(litres("each_round", earlier)).not.toBe("");
	expect(litres("each_day")).not.toBe("");
	expect(litres("each_day", earlier)).toBe("");
	expect(litres("each_day", "\n2027-02-28,23:00,,A,5.5")).not.toBe("");
});
