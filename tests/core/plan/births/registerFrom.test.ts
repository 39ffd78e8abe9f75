import { describe, expect, test } from "vitest";
import { settingEntry } from "../../../../src/core/edit/begin/settingEntry.ts";
import { levelChange } from "../../../../src/core/plan/births/levelChange.ts";
import { registerFigures } from "../../../../src/core/plan/births/registerFigures.ts";
import { type Plan, plan } from "../../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { columnOf } from "../../contentOf.ts";
import { recordsOf, repeated } from "../../forecast/register.ts";
import { calculationsBehind, problemCodes, rowsOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const start = "2027-03-01";
const before = repeated([5, 4, 6, 3, 7, 5, 5], 12);
const after = repeated([10, 12, 9, 11, 8, 10, 10], 4);
const changedOn = addDays(start, -after.length);
const records = recordsOf(addDays(changedOn, -before.length), [...before, ...after]);
const shortened = recordsOf(changedOn, after);
const made = (from = "", register = records) =>
	unitWith({ register_from: from, plan_days: 7 }, { "records.csv": register });
const figuresOf = (workbook: Workbook) => registerFigures(readWorkbook(workbook), start);

/** What the plan says of births. */
const births = (of: Plan) =>
	["day-plan.csv", "forecast.csv"].flatMap((file) => columnOf(of, file, "births_expected"));

describe("births learned from a day on", () => {
	test("forecast, weekday factors, scorecard and advice are those of a register that begins there", () => {
		const started = plan(made(changedOn));
		const alone = plan(made("", shortened));
		expect(births(started)).toEqual(births(alone));
		expect(valueIn(figuresOf(made(changedOn)).forecast)).toEqual(
			valueIn(figuresOf(made("", shortened)).forecast),
		);
		const scores = (of: Plan) => columnOf(of, "scorecard.csv", "chance_given");
		expect(scores(started)).toEqual(scores(alone));
		expect(scores(started).length).toBeGreaterThan(0);
		expect(problemCodes(started)).not.toContain("level-shift");
		expect(births(started)).not.toEqual(births(plan(made())));
	});

	test("blank, or the first recorded day, is the whole register", () => {
		const whole = births(plan(made()));
		expect(births(plan(made(addDays(changedOn, -before.length))))).toEqual(whole);
		expect(figuresOf(made()).register?.origin.kind).toBe("typed");
	});

	test("the why of a day's births says so", () => {
		const keys = (from: string) => {
			const row = rowsOf(plan(made(from)), "day-plan.csv")[0];
			return [...calculationsBehind(row?.births_expected as never)].map(({ key }) => key);
		};
		expect(keys(changedOn)).toContain("register_since");
		expect(keys("")).not.toContain("register_since");
	});

	test("few days left: births a day lead; none left: they are used, and that is said", () => {
		const few = plan(made(addDays(start, -5)));
		expect(problemCodes(few)).toContain("short-register");
		const none = plan(made(start));
		expect(problemCodes(none)).toContain("nothing-recorded-since");
		expect(new Set(columnOf(none, "day-plan.csv", "births_expected"))).toEqual(new Set([6]));
		for (const [from, register] of [
			[start, "date,births,kits_used"],
			["", recordsOf(start, after)],
			[changedOn, records],
		] as const)
			expect(problemCodes(plan(made(from, register)))).not.toContain("nothing-recorded-since");
	});

	test("a day that cannot be read is a problem: no other figure stands in for the forecast", () => {
		const wrong = plan(made("last spring"));
		expect(problemCodes(wrong, "error")).toEqual(["bad-cell"]);
		expect(new Set(columnOf(wrong, "day-plan.csv", "births_expected"))).toEqual(
			new Set([undefined]),
		);
	});
});

test("the change that is offered, taken over as one edit of the settings", () => {
	const change = levelChange(figuresOf(made()));
	expect(change).toMatchObject({
		before: expect.closeTo(5, 0),
		after: expect.closeTo(10, 0),
		daysBefore: expect.closeTo(before.length, -1),
	});
	expect((change?.daysBefore ?? 0) + (change?.daysAfter ?? 0)).toBe(before.length + after.length);
	const since = change?.since ?? "";
	const edited = settingEntry("register_from").write(made(), since) as Workbook;
	expect(figuresOf(edited).register?.outcome).toMatchObject({ value: { firstDay: since } });
	expect(levelChange(figuresOf(edited))).toBeUndefined();
	const back = settingEntry("register_from").write(edited, "") as Workbook;
	expect(births(plan(back))).toEqual(births(plan(made())));
});

test("of the days before and after only those with births written down are counted", () => {
	const days = [...before.slice(0, 40), null, null, null, ...before.slice(43), ...after];
	const change = levelChange(
		figuresOf(made("", recordsOf(addDays(changedOn, -before.length), days))),
	);
	expect((change?.daysBefore ?? 0) + (change?.daysAfter ?? 0)).toBe(days.length - 3);
});

test("advice asks for the cause first and offers the start of the register last", () => {
	const message = plan(made()).problems.find(({ code }) => code === "level-shift")?.message ?? "";
	const [born, cause, offered] = ["risen from", "Look for the cause", "learn from that day on"].map(
		(words) => message.indexOf(words),
	);
	expect(born).toBeGreaterThanOrEqual(0);
	expect(cause).toBeGreaterThan(born as number);
	expect(offered).toBeGreaterThan(cause as number);
});
