import { expect, test } from "vitest";
import { birthsEveryDayEntry } from "../../../../src/core/edit/trial/birthsEveryDayEntry.ts";
import { trialEntries } from "../../../../src/core/edit/trial/trialEntries.ts";
import { triedOn } from "../../../../src/core/edit/trial/triedOn.ts";
import { withCopyKept } from "../../../../src/core/edit/withCopyKept.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const tried = (workbook: Workbook, texts: Record<string, string>) =>
	triedOn(workbook, new Map(Object.entries(texts)));

const column = (workbook: Workbook, file: string, at: number) =>
	workbook.tables[file]?.rows.map((row) => row[at]);

test("nothing tried is the workbook itself, and so is what stands there already", () => {
	const workbook = smallUnit();
	expect(tried(workbook, {}).workbook).toBe(workbook);
	expect(tried(workbook, { kits: "3", rounds: " 07:00 14:00 21:00", pots: "20" })).toEqual({
		workbook,
		differing: [],
		refused: new Map(),
	});
});

test("trying leaves the workbook as it is, to the last cell", () => {
	const workbook = smallUnit();
	const before = structuredClone(workbook);
	const { workbook: copy, differing } = tried(workbook, {
		"births-every-day": "9",
		kits: "2",
		rounds: "08:00 20:00",
		method: "boiling",
		delivery_beds: "4",
	});
	expect(workbook).toEqual(before);
	expect(differing).toHaveLength(5);
	expect(plan(copy).made).toBe(true);
});

test("one figure for every day of the plan keeps notes and other days; blank takes it out again", () => {
	const workbook = smallUnit({
		"births.csv": "date,births,note\n2027-02-28,3,before\n2027-03-02,8,referrals",
	});
	const { workbook: copy } = tried(workbook, { "births-every-day": "9" });
	expect(copy.tables["births.csv"]?.rows.slice(0, 3)).toEqual([
		["2027-02-28", "3", "before"],
		["2027-03-02", "9", "referrals"],
		["2027-03-01", "9", ""],
	]);
	expect(column(copy, "births.csv", 1)).toEqual(["3", ...Array(7).fill("9")]);
	const { workbook: blank } = tried(copy, { "births-every-day": "" });
	expect(column(blank, "births.csv", 1)).toEqual(["3", ...Array(7).fill("")]);
});

test("births that differ from day to day are no one figure", () => {
	const read = (births: string) =>
		birthsEveryDayEntry.read(
			unitWith({ plan_days: 2 }, { "births.csv": `date,births,note\n${births}` }),
		);
	expect(read("2027-03-01,8,\n2027-03-02,8,")).toBe("8");
	expect(read("2027-03-01,8,\n2027-03-02,9,")).toBe("");
	expect(read("2027-03-01,8,")).toBe("");
	expect(read("2027-03-01, 8 ,\n2027-03-02,8,")).toBe("8");
	expect(birthsEveryDayEntry.read(unitWith({ plan_days: "some" }))).toBe("");
	for (const settings of [{ plan_days: "some" }, { plan_start: "soon" }]) {
		const { tables } = birthsEveryDayEntry.write(unitWith(settings), "9") as Workbook;
		expect(tables["births.csv"]?.rows).toEqual(smallUnit().tables["births.csv"]?.rows);
	}
	const births = { header: ["date", "births", "note"], rows: [[" 2027-03-01 ", "8", "x"]] };
	const day = unitWith({ plan_days: 1 });
	const typed = { tables: { ...day.tables, "births.csv": births } };
	expect((birthsEveryDayEntry.write(typed, " 9 ") as Workbook).tables["births.csv"]?.rows).toEqual([
		[" 2027-03-01 ", "9", "x"],
	]);
});

test.each([
	["5", ["in_service", "in_service", "in_service", "out_of_service", "in_service", "in_service"]],
	["1", ["in_service", "out_of_service", "out_of_service", "out_of_service"]],
])(
	"%s kits: new ones get a row, the last are taken out of service and none is lost",
	(text, status) => {
		expect(column(tried(smallUnit(), { kits: text }).workbook, "kits.csv", 2)).toEqual(status);
	},
);

test("another method brings the steps that only it has, once, where the loads are", () => {
	const { workbook: copy } = tried(smallUnit(), { method: "boiling" });
	expect(column(copy, "steps.csv", 4)).toEqual([
		"chlorine",
		"",
		"boiling",
		"boiling",
		"boiling",
		"",
		"",
	]);
	const first = smallUnit({
		"steps.csv": "step,basis,minutes,hands_on,method\nhold, load ,20,no,",
	});
	expect(column(tried(first, { method: "boiling" }).workbook, "steps.csv", 4)?.at(-1)).toBe("");
	const none = smallUnit({ "steps.csv": "step,basis,minutes,hands_on,method\nwash,kit,20,yes," });
	expect(column(tried(none, { method: "boiling" }).workbook, "steps.csv", 4)?.[0]).toBe("");
	const unread = unitWith({ soak_minutes: "some" });
	expect(tried(unread, { method: "boiling" }).workbook.tables["steps.csv"]).toBe(
		unread.tables["steps.csv"],
	);
	const again = tried(copy, { method: "chlorine" }).workbook;
	expect(again.tables["steps.csv"]).toBe(copy.tables["steps.csv"]);
});

test.each([
	["births-every-day", "many"],
	["kits", "0"],
	["kits", "two"],
	["kits", "1.5"],
	["kits", "101"],
	["method", "fire"],
	["rounds", "25:00"],
	["delivery_beds", "-1"],
])("%s: “%s” is refused with what is allowed, and the rest is tried", (key, text) => {
	const { refused, differing } = tried(smallUnit(), { [key]: text, pots: "4" });
	expect(refused.get(key)).toContain("allowed is");
	expect(differing).toEqual(["pots"]);
});

test("the days planned are none of what is tried, and each entry has its key", () => {
	const keys = trialEntries.map(({ key }) => key);
	expect(new Set(keys).size).toBe(keys.length);
	expect(keys).not.toContain("plan_start");
	expect(keys).not.toContain("plan_days");
});

test("what is tried can be kept under a name; the workbook's own settings stay", () => {
	const workbook = smallUnit();
	const { workbook: copy } = tried(workbook, { pots: "4", rounds: "08:00" });
	const kept = withCopyKept(workbook, "four pots", copy);
	expect(kept.tables["kept-settings.csv"]?.rows).toContainEqual([
		"four pots",
		"setting",
		"pots",
		"4",
	]);
	expect(kept.tables["kept-settings.csv"]?.rows).toContainEqual([
		"four pots",
		"round",
		"08:00",
		"",
	]);
	expect(kept.tables["unit.csv"]).toBe(workbook.tables["unit.csv"]);
});
