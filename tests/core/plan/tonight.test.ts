import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { contentOf } from "../contentOf.ts";
import { codesOf, rowsOf, valueIn } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

const FILE = "tonight.csv";
const tonight = (settings: Record<string, string | number>, changes: Record<string, string> = {}) =>
	contentOf(
		plan(unitWith({ heat_kw: 3, ...settings }, changes)),
		FILE,
		"date",
		"by",
		"for_round",
		"task",
	);

test("every fire, under the day and hour at which it is lit", () => {
	expect(tonight({ plan_days: 2 }).map((row) => row.slice(0, 3))).toEqual([
		["2027-02-28", "21:25", "morning, 2027-03-01"],
		["2027-03-01", "04:25", "afternoon, 2027-03-01"],
		["2027-03-01", "11:25", "night, 2027-03-01"],
		["2027-03-01", "21:25", "morning, 2027-03-02"],
		["2027-03-02", "04:25", "afternoon, 2027-03-02"],
		["2027-03-02", "11:25", "night, 2027-03-02"],
	]);
});

test("what to do: litres up to whole ones, the fuel in its measure, the pot covered", () => {
	expect(tonight({ plan_days: 1, boil_hold_minutes: 0, cooling_per_hour: 0.2 })[0]?.[3]).toMatch(
		/^Light the stove and boil 30 L in pots 1, 2, 3; fuel 1\.\d kg; cover and leave to cool\.$/,
	);
	expect(
		tonight({
			plan_days: 1,
			boil_hold_minutes: 5,
			fuel: "electric",
			cooling_per_hour: 0.2,
		})[0]?.[3],
	).toMatch(/boil 31 L in pots 1, 2, 3; fuel \d\.\d kWh/);
});

test("where the fuel cannot be told the hour stands, and the rest waits for it", () => {
	const settings = { plan_days: 1, boil_minutes_measured: 40, stove_efficiency: "good" };
	const [row] = rowsOf(plan(unitWith(settings)), FILE);
	expect([valueIn(row?.for_round), codesOf(row?.task)]).toEqual([
		"morning, 2027-03-01",
		["bad-cell"],
	]);
});

test("water that is quickly ready is boiled on the day itself", () => {
	const lit = tonight({ plan_days: 1, cooling_per_hour: 5, heat_kw: 20 });
	expect(lit.map(([date]) => date)).toEqual(["2027-03-01", "2027-03-01", "2027-03-01"]);
});

test.each([
	["every_round", /^Light the stove/],
	["standing", /^If water used or too old: light the stove/],
	["after_use", /^If a kit waits: light the stove/],
])("boiled %s: under which condition", (boil_for, words) => {
	expect(tonight({ plan_days: 1, boil_for })[0]?.[3]).toMatch(words);
});

test("earliest first, also where a later round is lit before an earlier one", () => {
	// Nearly all births come between two and eight, so that the second round boils three times as much on a weak fire.
	const night = Array.from({ length: 24 }, (_, h) => `${h},${h >= 2 && h < 8 ? 100 : 1}`);
	const lit = tonight(
		{ plan_days: 2, heat_kw: 2, boiled_water_hours: 48, kits_used_per_100_births: 60 },
		{
			"hours.csv": ["hour,share", ...night].join("\n"),
			"rounds.csv": "start,label\n02:00,first\n08:00,second",
			"steps.csv": "step,basis,minutes,hands_on\nsoak,load,20,no",
			"kits.csv": `kit,kind,status,ready_since,note\n${Array.from({ length: 9 }, (_, i) => `K${i},bag set,in_service,,`).join("\n")}`,
		},
	).map(([date, by]) => `${date} ${by}`);
	expect(lit).toHaveLength(4);
	expect(lit).toEqual([...lit].sort());
});
