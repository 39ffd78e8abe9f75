import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import type { Act } from "../../../../src/core/plan/today/act.ts";
import { actsBetween } from "../../../../src/core/plan/today/actsBetween.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { dateTime } from "../../../../src/core/values/dateTime.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const when = (text: string) => dateTime().schema.parse(text);
const write = dateTime().write;

function acts(workbook: Workbook, from: string, until: string): Act[] {
	return actsBetween(plan(workbook), readWorkbook(workbook), when(from), when(until));
}

const inShort = (act: Act) => `${write(act.at)} ${act.kind} ${act.round}`;
const withStove = (settings: Record<string, string | number> = {}) =>
	unitWith({ heat_kw: 3, pot_litres: 10, ...settings });

describe("what the plan asks for between two moments", () => {
	test("a stove is named on the day on which it is lit, though the round is on the next", () => {
		const fires = acts(withStove(), "2027-02-28 12:00", "2027-03-01 00:00");
		expect(fires).toHaveLength(1);
		expect(fires[0]).toMatchObject({ kind: "fire", round: "morning", forDate: "2027-03-01" });
		expect(fires[0]?.at.date).toBe("2027-02-28");
	});

	test("a stove that should be lit already stays until its round begins", () => {
		const fire = (from: string) =>
			acts(withStove(), from, "2027-03-01 12:00").filter(
				(act) => act.kind === "fire" && act.round === "morning",
			);
		expect(fire("2027-03-01 06:59")).toHaveLength(1);
		expect(fire("2027-03-01 07:00")).toHaveLength(0);
	});

	test("a round that runs counts until it ends, then no longer", () => {
		const round = (from: string) =>
			acts(smallUnit(), from, "2027-03-01 12:00").filter(
				(act) => act.kind === "round" && act.round === "morning",
			);
		const [act] = round("2027-03-01 07:30");
		expect(act).toMatchObject({ kind: "round", at: when("2027-03-01 07:00") });
		const over = write((act as Act).until);
		expect(round(over)).toHaveLength(0);
	});

	test("what begins at the end is left out, and all stands in the order of the clock", () => {
		const found = acts(withStove(), "2027-03-01 00:00", "2027-03-01 21:00").map(inShort);
		const times = found.map((words) => words.slice(0, 16));
		expect(times).toEqual([...times].sort());
		expect(new Set(times).size).toBeGreaterThan(3);
		expect(found).toContain("2027-03-01 14:00 round afternoon");
		expect(found.filter((words) => words.includes("round night"))).toEqual([]);
	});

	test("solution is ready when the soak begins, with what to measure out", () => {
		const [mix] = acts(smallUnit(), "2027-03-01 00:00", "2027-03-01 12:00").filter(
			(act) => act.kind === "mix",
		);
		const [round] = acts(smallUnit(), "2027-03-01 00:00", "2027-03-01 12:00").filter(
			(act) => act.kind === "round",
		);
		expect(mix).toMatchObject({ product: "liquid", lot: "L1", measure: "mL" });
		const soak = round?.kind === "round" ? round.steps.find(({ isSoak }) => isSoak) : undefined;
		expect(soak?.step).toBe("soak");
		expect(mix?.until).toEqual(soak?.from);
	});

	test.each([
		["for each round", { solution_made: "each_round" }, 3],
		["once a day", { solution_made: "each_day" }, 1],
		["once a day, again after its life", { solution_made: "each_day", solution_life_hours: 7 }, 3],
		[
			"once a day, still good in the afternoon",
			{ solution_made: "each_day", solution_life_hours: 8 },
			2,
		],
	] as const)("solution is made %s", (_words, settings, count) => {
		const mixes = acts(unitWith(settings), "2027-03-01 00:00", "2027-03-02 00:00").filter(
			(act) => act.kind === "mix",
		);
		expect(mixes).toHaveLength(count);
	});

	test("what waits for a number that is not there is no act, and nothing stands in for it", () => {
		const unread = unitWith({ heat_kw: "hot", solution_life_hours: "long" });
		const kinds = acts(unread, "2027-02-28 00:00", "2027-03-02 00:00").map(({ kind }) => kind);
		expect([...new Set(kinds)]).toEqual(["round"]);
		expect(acts(smallUnit({ "rounds.csv": "start,label" }), "2027-03-01", "2027-03-02")).toEqual(
			[],
		);
	});

	test("nothing is mixed where nobody can read when solution is made", () => {
		const mixes = acts(unitWith({ solution_made: "often" }), "2027-03-01", "2027-03-02").filter(
			({ kind }) => kind === "mix",
		);
		expect(mixes).toEqual([]);
	});

	test("past midnight a round still belongs to the evening it began in", () => {
		const late = smallUnit({ "rounds.csv": "start,label\n22:30,late" });
		const [act] = acts(late, "2027-03-02 00:05", "2027-03-02 12:00");
		expect(act && inShort(act)).toBe("2027-03-01 22:30 round late");
		expect(act?.until.date).toBe("2027-03-02");
	});
});
