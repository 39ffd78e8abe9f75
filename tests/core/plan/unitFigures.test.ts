import { describe, expect, test } from "vitest";
import { valueIn } from "../../../src/core/outcome.ts";
import { dayDemands } from "../../../src/core/plan/dayDemands.ts";
import { coverFigures } from "../../../src/core/plan/kits/coverFigures.ts";
import { kindNames } from "../../../src/core/plan/kits/kindFigures.ts";
import { reprocessingOver, usesComeBack } from "../../../src/core/plan/kits/reprocessingOver.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { plannedUnit } from "../../../src/core/plan/plannedUnit.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../expectWithin.ts";
import { figure } from "../answerOf.ts";
import { calculationsBehind, numberIn, rowsOf } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

function unitOf(...of: Parameters<typeof unitWith>) {
	const planned = plannedUnit(readWorkbook(unitWith(...of)));
	if (!planned.ok) throw new Error("the unit has no days");
	return planned.value.unit;
}

const two = (first: string, second: string) => ({
	"kinds.csv": "kind,piece,count\nset,bag,1\nbulb,bulb,1",
	"kits.csv": "kit,kind,status,ready_since,note\nA,set,in_service,,\nB,bulb,in_service,,",
	"kind-use.csv": `kind,uses_per_100_births\n${first},6\n${second},4`,
});
const sterile = { "treatments.csv": "kind,piece,method,note\nbulb,bulb,autoclave," };

test("of several kinds the one that keeps shortest says how long kits stay ready", () => {
	const lives = { ready_life_days: 5, sterile_life_days: 20 };
	const days = (first: string, second: string) =>
		valueIn(unitOf(lives, { ...two(first, second), ...sterile }).readyLifeDays);
	expect([days("set", "bulb"), days("bulb", "set")]).toEqual([5, 5]);
	const bulb = { ...two("bulb", "set"), "kind-use.csv": "kind,uses_per_100_births\nbulb,4" };
	expect(valueIn(unitOf(lives, { ...bulb, ...sterile }).readyLifeDays)).toBe(20);
});

test("descaled on the day that the settings say, unless the record knows a later one", () => {
	const done = (...rounds: string[]) => ({
		"rounds-done.csv": ["date,start,ended,kits,descaled", ...rounds].join("\n"),
	});
	const rounds = ["2027-02-20,07:00,08:00,A,yes", "2027-02-26,07:00,08:00,A,no"];
	const since = (last_descaled_on: string) =>
		unitOf({ plan_days: 1, last_descaled_on }, done(...rounds)).sinceDescaling;
	expect(since("2027-02-24")).toEqual({ rounds: 1, lastOn: "2027-02-24" });
	expect(since("2027-02-27")).toEqual({ rounds: 0, lastOn: "2027-02-27" });
	for (const given of ["", "2027-02-10"])
		expect(since(given)).toEqual({ rounds: 1, lastOn: "2027-02-20" });
});

describe("how kits come back", () => {
	test.each<[string, Parameters<typeof unitWith>, string, boolean]>([
		["in rounds", [{}], "in_rounds", true],
		["from an autoclave elsewhere", [{ method: "autoclave" }], "sent_away", false],
		["one by one", [{ reprocessing: "after_each_use" }], "after_each_use", false],
		["with two kinds, in rounds", [{}, two("set", "bulb")], "in_rounds", true],
		[
			"with two kinds, one sent away",
			[{}, { ...two("bulb", "set"), ...sterile }],
			"sent_away",
			false,
		],
	])("%s", (_, of, kind, byUsesAlone) => {
		const unit = unitOf(...of);
		const days = dayDemands(unit, ["2027-03-01", "2027-03-02"]);
		expect(valueIn(reprocessingOver(unit, 0, figure(110), days))).toMatchObject({ kind });
		expect(usesComeBack(unit, 0, days) !== undefined).toBe(byUsesAlone);
	});

	test("of the earliest that kits of several kinds come back, a round is as long as with one kit", () => {
		const unit = unitOf({}, two("set", "bulb"));
		const days = dayDemands(unit, ["2027-03-01"]);
		const [length, fullest] = [usesComeBack(unit, 1, days), coverFigures(unit, days).turnaround];
		expect(length && valueIn(length)).toMatchObject({ length: { perRound: 110, perKit: 0 } });
		expect(valueIn(fullest)).toBeGreaterThanOrEqual(110);
	});

	test("with two kinds every round counts as long as the fullest", () => {
		const lengthOf = (...of: Parameters<typeof unitWith>) => {
			const unit = unitOf(...of);
			const days = dayDemands(unit, ["2027-03-01"]);
			return (valueIn(reprocessingOver(unit, 0, figure(110), days)) as { length?: unknown }).length;
		};
		expect(lengthOf({}, two("set", "bulb"))).toEqual({ perRound: 110, perKit: 0, loads: [] });
		expect(lengthOf({})).toMatchObject({ perRound: 40, perKit: 50 });
	});
});

test("water to boil is that of all methods by which a kit goes", () => {
	const boiled = (method: string, files: Record<string, string> = {}) => {
		const settings = { method, ready_life_days: 90, plan_days: 1 };
		const [day] = rowsOf(plan(unitWith(settings, files)), "day-plan.csv");
		return numberIn(day, "boiled_litres_expected") as number;
	};
	const both = { "treatments.csv": "kind,piece,method,note\nbag set,mask,boiling," };
	// Each round is boiled for; renewed kits, by how long a round is, make the difference.
	const sum = boiled("chlorine") + boiled("boiling");
	expect(boiled("chlorine")).toBeLessThan(boiled("chlorine", both));
	expectWithin(boiled("chlorine", both), sum, 0.1, "L");
});

test("a kind whose name cannot be read has none; the others keep theirs", () => {
	const unnamed = { ...two("set", "bulb"), "kind-use.csv": "kind,uses_per_100_births\nset,6\n,4" };
	expect(unitOf({}, unnamed).kinds.map(({ name }) => name)).toEqual(["set", ""]);
	expect(unitOf({}, unnamed).kinds[1]?.usesPer100Births.origin).toMatchObject({
		place: { file: "kind-use.csv", line: 3, column: "uses_per_100_births" },
	});
	expect(kindNames(readWorkbook(unitWith({}, unnamed)))).toEqual(["set", ""]);
});

test("where all kits are alike, what is thrown away of them is not counted among their pieces", () => {
	const thrown = { "treatments.csv": "kind,piece,method,note\nbag set,mask,single_use," };
	// Of a bag, two valves and two masks.
	expect(valueIn(unitOf({}, thrown).kinds[0]?.piecesInKit as never)).toBe(3);
});

test("how long a round is counted on for renewing goes by the day with most uses", () => {
	const [day] = rowsOf(plan(unitWith({})), "day-plan.csv");
	const counted = [...calculationsBehind(day?.kits_expired_expected as never)].find(
		({ key }) => key === "minutes_counted_on",
	);
	// 12 hours of it bring a mean of 3 kits, of rounds that run 3 ÷ (1 − e^−3) = 3.16: 30 minutes,
	// four kits of 20 and two loads of 20.
	expect(counted?.compute({ ...counted.example?.inputs, usesPerDay: [0.1, 6, 0.1] })).toBe(150);
});
