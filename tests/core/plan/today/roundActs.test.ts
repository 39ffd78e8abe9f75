import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { fireActs } from "../../../../src/core/plan/today/fireActs.ts";
import { roundActs } from "../../../../src/core/plan/today/roundActs.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { dateTime } from "../../../../src/core/values/dateTime.ts";
import { unitWith } from "../../smallUnit.ts";

const { write } = dateTime();
/** Two kits in a round, soaked one by one; their masks are boiled, longer than anything is soaked. */
const workbook = unitWith(
	{ plan_days: 2, soak_capacity_kits: 1, births_per_day: 12, heat_kw: 3 },
	{
		"treatments.csv": "kind,piece,method,note\nbag set,mask,boiling,",
		"steps.csv": `step,basis,minutes,hands_on,method
			mix,round,10,yes,chlorine
			wash,kit,10,yes,
			soak,load,20,no,chlorine
			boil,load,40,no,boiling
			rinse,round,10,yes,chlorine`,
	},
);
const made = plan(workbook);
const rounds = roundActs(made, readWorkbook(workbook));

test("a round has its kits, and of its steps it is known which soak and which take hands", () => {
	const [morning] = rounds;
	expect(morning).toMatchObject({ kind: "round", round: "morning", kits: 2, renew: "" });
	expect(morning && write(morning.at)).toBe("2027-03-01 07:00");
	expect(
		morning?.steps.map(({ step, isSoak, isHandsOn }) => `${step} ${isSoak} ${isHandsOn}`),
	).toEqual([
		"mix false true",
		"wash false true",
		"soak (load 1 of 2) true false",
		"soak (load 2 of 2) true false",
		"boil false false",
		"rinse false true",
	]);
});

// The step of 40 minutes from 22:10 heats for 20 and boils for 20.
test("a fire is late once its own round begins, one under pieces once they should boil", () => {
	const fires = fireActs(made, rounds).map(({ forDate, round, until, pieces }) =>
		[forDate, round, pieces, write(until)].join(" "),
	);
	expect(new Set(fires.filter((fire) => fire.includes("night")))).toEqual(
		new Set([
			"2027-03-01 night  2027-03-01 21:00",
			"2027-03-01 night boiling 2027-03-01 22:30",
			"2027-03-02 night  2027-03-02 21:00",
			"2027-03-02 night boiling 2027-03-02 22:30",
		]),
	);
});

test("the soak is a step in chlorine, also where pieces boil longer than they soak", () => {
	const longer = unitWith(
		{ plan_days: 1, soak_minutes: 30 },
		{
			"treatments.csv": "kind,piece,method,note\nbag set,mask,boiling,",
			"steps.csv": `step,basis,minutes,hands_on,method
				boil,load,40,no,boiling
				soak,load,20,no,chlorine`,
		},
	);
	const [round] = roundActs(plan(longer), readWorkbook(longer));
	expect(round?.steps.map(({ step, isSoak }) => `${step} ${isSoak}`)).toEqual([
		"boil false",
		"soak true",
	]);
});
