import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { descalingOnRecord } from "../../../../src/core/plan/rounds/descalingOnRecord.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { DESCALE_STEP } from "../../../../src/core/rounds/timedSteps.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

/** Descaling at every seventh round; a plan of 28 days from 1 March with rounds at 7 and 14; so many births that each of them runs. */
const settings = {
	plan_days: 28,
	descale_every_rounds: 7,
	births_per_day: 300,
	kits_used_per_100_births: 100,
};
const rows = (rounds: readonly string[]) => ({
	"rounds.csv": "start,label\n07:00,morning\n14:00,afternoon",
	"rounds-done.csv": ["date,start,kits,descaled", ...rounds].join("\n"),
});
const on = (day: string, start = "07:00", descaled = "no") => `${day},${start},A,${descaled}`;
const six = [15, 16, 17, 18, 19, 20].map((day) => on(`2027-02-${day}`));

/** The rounds in which the work sheet has a descaling. */
function dueIn(rounds: readonly string[]): string[] {
	return contentOf(plan(unitWith(settings, rows(rounds))), "run-sheet.csv", "step", "date", "round")
		.filter(([step]) => step === DESCALE_STEP)
		.map(([, date, round]) => `${date} ${round}`);
}

// record.md, descaling goes on counting: rounds since the last row with descaled = yes.
test("the work sheet has the next descaling where it falls due by what was done, within the plan too", () => {
	// The seventh round, the first of the plan.
	expect(dueIn(six).slice(0, 2)).toEqual(["2027-03-01 morning", "2027-03-04 afternoon"]);
	// It was descaled; seven rounds after it that of the 4th is the next.
	const descaled = [...six, on("2027-03-01", "07:00", "yes")];
	expect(dueIn(descaled)[0]).toBe("2027-03-04 afternoon");
	// No round ran until the 9th but one, on the 1st without a descaling: due in the next.
	expect(dueIn([...six, on("2027-03-01"), on("2027-03-09", "07:00", "yes")])[0]).toBe(
		"2027-03-12 afternoon",
	);
	// Seven rounds were done by the afternoon of the 4th, and it was left out: due in the round after it.
	const seven = ["02", "03", "04"].flatMap((day) => [
		on(`2027-03-${day}`),
		on(`2027-03-${day}`, "14:00"),
	]);
	expect(dueIn([on("2027-03-01", "14:00"), ...seven])[0]).toBe("2027-03-05 morning");
	// Of a week in which nothing was done, nothing is counted.
	expect(dueIn([on("2027-03-08")])[0]).toBe("2027-03-11 morning");
});

test("counted are the rounds up to the plan's last day, and since when is said", () => {
	const found = (...rounds: string[]) =>
		descalingOnRecord(readWorkbook(unitWith(settings, rows(rounds))), "2027-03-01", "2027-03-07");
	expect(found(...six)).toEqual({ rounds: 6, lastOn: undefined, countedTo: undefined });
	expect(found(on("2027-03-07", "14:00"), ...six, on("2027-03-07", "07:00", "yes"))).toEqual({
		rounds: 1,
		lastOn: "2027-03-07",
		countedTo: { date: "2027-03-07", minutes: 840 },
	});
	expect(found(...six, on("2027-03-08", "07:00", "yes"))).toMatchObject({ rounds: 6 });
});
