import { expect, test } from "vitest";
import { addDays } from "../../../../src/core/values/date.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import { daysToCome } from "../../../../src/ui/subjects/births/daysToCome.ts";
import { pastDays } from "../../../../src/ui/subjects/births/forecastView.ts";
import {
	forecastHeadline,
	forecastSentence,
	pattern,
} from "../../../../src/ui/subjects/births/forecastWords.ts";
import {
	kitShareOf,
	kitShareSwitch,
	kitShareWords,
} from "../../../../src/ui/subjects/births/kitShareWords.ts";
import { type Register, registerOf } from "../../../../src/ui/subjects/births/registerOf.ts";
import {
	birthsHeadline,
	recordsHeadline,
} from "../../../../src/ui/subjects/births/registerWords.ts";
import {
	scorecardHeadline,
	scorecardSentence,
} from "../../../../src/ui/subjects/births/scorecardWords.ts";
import { smallUnit, unitWith } from "../../../core/smallUnit.ts";

const EVEN = [1, 1, 1, 1, 1, 1, 1];

/** Days recorded before 2027-03-01, the given births over and over; undefined is a day without a row. */
function records(days: number, births: readonly (number | undefined)[], kits = "1"): string {
	const rows = Array.from({ length: days }, (_, i) => {
		const count = births[i % births.length];
		return count === undefined ? "" : `${addDays("2027-03-01", i - days)},${count},${kits}`;
	});
	return ["date,births,kits_used", ...rows.filter(Boolean)].join("\n");
}

const stateOf = (files: Record<string, string>) => new Store(smallUnit(files)).state;

test("a day's own figure, its forecast and the setting are told apart", () => {
	const state = stateOf({
		"records.csv": records(28, [4, 6]),
		"births.csv": "date,births,note\n2027-03-02,9,",
	});
	expect(daysToCome(state).map((day) => day.source)).toEqual([
		"register",
		"own",
		...Array(5).fill("register"),
	]);
	expect(forecastHeadline(daysToCome(state))).toMatch(
		/^About 5\.\d births a day to come; most on Tue 2 Mar: 9\.0, perhaps 14$/,
	);
	expect(birthsHeadline(state)).toBe(
		"1 of 7 days carries your own figure; the others take the forecast from the register",
	);
	const short = stateOf({ "records.csv": records(5, [4]) });
	expect(new Set(daysToCome(short).map((day) => day.source))).toEqual(new Set(["moved"]));
	expect(forecastSentence(daysToCome(short), undefined)).toContain(
		"births a day from the settings",
	);
});

test("no weekday pattern is said where the days hardly differ", () => {
	expect(pattern(EVEN)).toBe("The days of the week hardly differ.");
	expect(pattern([0.8, 1, 1, 1, 1.2, 1, 1])).toBe(
		"Thursdays bring most (20 % above a mean day), Sundays fewest (20 % below a mean day).",
	);
});

test("days of the register that are missing are gaps, and only the last weeks are drawn", () => {
	const state = stateOf({ "records.csv": records(40, [3, undefined, 5]) });
	const past = pastDays(registerOf(state) as Register, 4);
	expect(past.every((day) => day.date >= "2027-02-01" && day.date < "2027-03-01")).toBe(true);
	expect(past).toHaveLength(19);
	expect(recordsHeadline(state)).toMatch(
		/^27 days recorded since .*, 13 days missing: 4\.0 births a day$/,
	);
});

test("the learned share of kits stands beside the setting, and the switch says which is taken", () => {
	const files = { "records.csv": records(50, [10]) };
	const of = (setting: string) => {
		const register = registerOf(
			new Store(unitWith({ kit_share_from_register: setting }, files)).state,
		);
		const share = register && kitShareOf(register);
		if (!share) throw new Error("no share");
		return share;
	};
	expect(of("no")).toMatchObject({
		chosen: 10,
		births: 500,
		uses: 50,
		weight: 100,
		takesLearned: false,
	});
	expect(kitShareWords(of("no"))).toContain("50 kits used at 500 births");
	expect(kitShareSwitch(of("no"))).toContain("The plan takes the setting");
	expect(kitShareSwitch(of("yes"))).toContain("The plan takes the learned figure");
});

test("the scorecard says in words which way was better", () => {
	const weekly = stateOf({ "records.csv": records(70, [2, 2, 2, 2, 2, 20, 2]) });
	expect(scorecardHeadline(weekly)).toBe("A simpler way did better: same weekday last week");
	expect(scorecardSentence(weekly)).toMatch(
		/^Each of 63 past days was forecast.* “same weekday last week” gave [\d.]+ %, so the forecast was worse/,
	);
	const level = stateOf({ "records.csv": records(70, [6, 2, 9, 5, 7, 3, 8, 4, 6, 10, 5]) });
	expect(scorecardHeadline(level)).toMatch(
		/^The forecast did (better than|as well as) both simple ways$/,
	);
	expect(scorecardSentence(stateOf({}))).toBeUndefined();
});
