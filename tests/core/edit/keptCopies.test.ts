import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keptCopies } from "../../../src/core/edit/keptCopies.ts";
import { withCopyKept } from "../../../src/core/edit/withCopyKept.ts";
import { withCopyUsed } from "../../../src/core/edit/withCopyUsed.ts";
import { withoutCopy } from "../../../src/core/edit/withoutCopy.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../smallUnit.ts";

/** The settings as texts by key; a blank one is as good as none. */
function settingsOf({ tables }: Workbook): Record<string, string> {
	const rows = tables["unit.csv"]?.rows ?? [];
	return Object.fromEntries(
		rows.flatMap(([key = "", value = ""]) => (value === "" ? [] : [[key, value]])),
	);
}

function roundsOf({ tables }: Workbook) {
	return tables["rounds.csv"]?.rows;
}

function used(workbook: Workbook, name: string): Workbook {
	const copy = keptCopies(workbook).find((each) => each.name === name);
	if (!copy) throw new Error(`no copy ${name}`);
	return withCopyUsed(workbook, copy);
}

const changed = (kept: Workbook, unit: Workbook): Workbook => ({
	tables: { ...unit.tables, "kept-settings.csv": kept.tables["kept-settings.csv"] as never },
});

describe("kept copies of the settings", () => {
	test("a copy taken back restores every setting and round as typed, but not the days planned", () => {
		const before = unitWith({ delivery_beds: "three", plan_days: 7, fuel: "lpg" });
		const kept = withCopyKept(before, "as it was");
		const after = changed(
			kept,
			unitWith(
				{ delivery_beds: 5, plan_days: 14, plan_start: "2027-04-05", soak_minutes: 30 },
				{ "rounds.csv": "start,label\n09:30,once" },
			),
		);
		const back = used(after, "as it was");
		expect(settingsOf(back)).toEqual({
			...settingsOf(before),
			plan_days: "14",
			plan_start: "2027-04-05",
		});
		expect(roundsOf(back)).toEqual(roundsOf(before));
	});

	test("whatever was typed comes back, whatever was typed since", () => {
		const value = fc.string({ maxLength: 20 }).filter((text) => text.trim() === text);
		const unit = fc.record({ spare_kits: value, fuel: value, plan_confidence: value });
		const start = fc.constantFrom("07:00", "14:30", "banana", "7");
		const rounds = fc.uniqueArray(fc.tuple(start, value), { selector: ([at]) => at });
		const tables = fc.record({ unit, rounds }).map(({ unit: settings, rounds: rows }) => ({
			tables: {
				"unit.csv": { header: ["key", "value"], rows: Object.entries(settings) },
				"rounds.csv": { header: ["start", "label"], rows },
			},
		}));
		fc.assert(
			fc.property(tables, tables, (before, after) => {
				const back = used(changed(withCopyKept(before, "x"), after), "x");
				expect(settingsOf(back)).toEqual(settingsOf(before));
				expect(roundsOf(back)).toEqual(roundsOf(before));
			}),
			{ seed: 7, numRuns: 200 },
		);
	});

	test("a day without rounds is kept as such", () => {
		const kept = withCopyKept(smallUnit({ "rounds.csv": "start,label" }), "none");
		expect(roundsOf(used(changed(kept, smallUnit()), "none"))).toEqual([]);
		const blank = {
			header: ["start", "label"],
			rows: [
				[" ", "  "],
				["", ""],
			],
		};
		const spaced = withCopyKept({ tables: { "rounds.csv": blank } }, "blank");
		const lines = spaced.tables["kept-settings.csv"]?.rows.filter(([, of]) => of === "round");
		expect(lines).toEqual([["blank", "round", "", ""]]);
	});

	test("what a copy does not name stays as it is", () => {
		const own = smallUnit({
			"kept-settings.csv": "name,of,key,value\nmore beds,setting,delivery_beds,9",
		});
		const back = used(own, "more beds");
		expect(settingsOf(back)).toEqual({ ...settingsOf(own), delivery_beds: "9" });
		expect(roundsOf(back)).toEqual(roundsOf(own));
	});

	test("a round that stays at its time keeps what else stands in its row", () => {
		const noted = smallUnit({
			"rounds.csv": "start,label,who\n07:00,morning,Ada\n21:00,night,Ben",
		});
		const kept = withCopyKept(smallUnit({ "rounds.csv": "start,label\n07:00,early" }), "one");
		expect(roundsOf(used(changed(kept, noted), "one"))).toEqual([["07:00", "early", "Ada"]]);
		const spaced = { header: ["start", "label", "who"], rows: [[" 07:00 ", "morning", "Eve"]] };
		const typed = { tables: { ...noted.tables, "rounds.csv": spaced } };
		expect(roundsOf(used(changed(kept, typed), "one"))).toEqual([["07:00", "early", "Eve"]]);
	});

	test("a row that cannot be understood belongs to its copy, and one without a name to none", () => {
		const own = smallUnit({
			"kept-settings.csv": `name,of,key,value
				first,setting,pots,4
				first,other,pots,5
				,setting,pots,6`,
		});
		const copies = keptCopies(own).map(({ name, rows, problems }) => [
			name,
			rows.length,
			problems.map(({ code, line, column }) => [code, line, column]),
		]);
		expect(copies).toEqual([["first", 1, [["bad-cell", 3, "of"]]]]);
	});

	test("copies stand side by side; deleting one leaves the others", () => {
		const two = withCopyKept(withCopyKept(smallUnit(), "first"), "second");
		expect(keptCopies(two).map(({ name }) => name)).toEqual(["first", "second"]);
		const one = withoutCopy(two, "first");
		expect(keptCopies(one).map(({ name }) => name)).toEqual(["second"]);
		expect(settingsOf(used(one, "second"))).toEqual(settingsOf(smallUnit()));
	});

	test("each copy has its own rows, and what is blank or names nothing is not written", () => {
		const own = smallUnit({
			"unit.csv": "key,value\nplan_start,2027-03-01\n,note\npots,20",
			"rounds.csv": "start,label\n,\n,by hand\n 07:00 ,early",
		});
		const two = withCopyKept(withCopyKept(own, "first"), "second");
		const [first, second] = keptCopies(two);
		const rows = (copy: typeof first, of: string) =>
			copy?.rows.map(({ value }) => value).filter((value) => value.of === of);
		expect(rows(first, "round")).toEqual([
			{ name: "first", of: "round", key: "", value: "by hand" },
			{ name: "first", of: "round", key: "07:00", value: "early" },
		]);
		expect(rows(second, "round")).toHaveLength(2);
		expect(two.tables["kept-settings.csv"]?.rows).toContainEqual([
			"first",
			"round",
			"07:00",
			"early",
		]);
		expect(rows(first, "setting")?.map(({ key }) => key)).not.toContain("");
		const bare = changed(two, smallUnit({ "unit.csv": "key,value\nplan_start,2027-03-01" }));
		expect(used(bare, "first").tables["unit.csv"]?.rows).toEqual([
			["plan_start", "2027-03-01"],
			["pots", "20"],
		]);
		const late = changed(
			two,
			smallUnit({ "rounds.csv": "start,label,who\n06:00,x,Ben\n07:00,y,Ada" }),
		);
		expect(roundsOf(used(late, "first"))).toEqual([
			["", "by hand", ""],
			["07:00", "early", "Ada"],
		]);
	});

	test("a row that cannot be understood belongs to its copy and says so", () => {
		const own = smallUnit({
			"kept-settings.csv": "name,of,key,value\ngood,setting,pots,3\nbad,seting,pots,4",
		});
		expect(keptCopies(own).map(({ name, problems }) => [name, problems.length])).toEqual([
			["good", 0],
			["bad", 1],
		]);
		expect(plan(own).problems).toContainEqual(
			expect.objectContaining({ file: "kept-settings.csv", line: 3, column: "of" }),
		);
	});

	test("copies change no number of the plan", () => {
		const own = plan(smallUnit());
		const kept = plan(withCopyKept(smallUnit(), "x"));
		expect(kept.problems).toEqual(own.problems);
		expect(kept.made).toBe(own.made);
	});
});
