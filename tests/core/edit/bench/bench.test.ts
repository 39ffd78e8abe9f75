import { describe, expect, test } from "vitest";
import {
	allPassed,
	answerOf,
	checkedTests,
	kitChecked,
} from "../../../../src/core/edit/bench/kitChecked.ts";
import { kitUsed } from "../../../../src/core/edit/bench/kitUsed.ts";
import { lineWritten, type Written } from "../../../../src/core/edit/bench/lineWritten.ts";
import { roundDone } from "../../../../src/core/edit/bench/roundDone.ts";
import { valueIn } from "../../../../src/core/outcome.ts";
import { kitsOn } from "../../../../src/core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { usesSheet } from "../../../../src/core/sheets/uses.ts";
import type { Workbook } from "../../../../src/core/workbook.ts";
import { smallUnit } from "../../smallUnit.ts";

const DAY = "2027-03-02";
const PIECES = 5;

function done(written: Written): Workbook {
	if (!written.ok) throw new Error(written.wrong[0]?.words);
	return written.workbook;
}

function wrong(written: Written): string[] {
	return written.ok ? [] : written.wrong.map(({ column }) => column);
}

function state(workbook: Workbook, kit: string): unknown {
	const row = kitsOn(readWorkbook(workbook), DAY).find((each) => valueIn(each.kit) === kit);
	return row && valueIn(row.state);
}

const used = { at: `${DAY}T04:10`, kit: "A", what: "used", by: "Esi" };
const round = { date: DAY, start: "07:00", kits: "A C", soak_in: "07:40", soak_out: "08:00" };
const check = { checked_at: `${DAY} 10:00`, kit: "A", purpose: "after_round", checked_by: "Ama" };

describe("a kit from its use to the next baby, each act a line of an ordinary sheet", () => {
	const afterUse = done(kitUsed(smallUnit(), used));
	const afterRound = done(roundDone(afterUse, round));
	const afterCheck = done(allPassed(afterRound, check, PIECES));

	test("used, in its round, tested", () => {
		expect([smallUnit(), afterUse, afterRound, afterCheck].map((each) => state(each, "A"))).toEqual(
			["ready", "to_reprocess", "to_reprocess", "ready"],
		);
		expect(afterUse.tables["uses.csv"]?.rows).toEqual([
			[`${DAY}T04:10`, "A", "used", "Esi", "", ""],
		]);
		expect(readWorkbook(afterCheck).problems).toEqual([]);
	});

	test.each(checkedTests)("%s failed takes it out, as the only thing looked at", (failed) => {
		const found = { ...check, checked_by: "", [failed]: failed === "damage" ? "yes" : "no" };
		const after = state(done(kitChecked(afterRound, found)), "A");
		expect(after).toBe(failed === "clean" ? "to_reprocess" : "in_repair");
	});

	test("what is found further in the same check goes into its line, or into a new one where that was undone", () => {
		const first = kitChecked(afterRound, { ...check, seal_holds: "no" });
		if (!first.ok) throw new Error("not written");
		const second = done(
			kitChecked(first.workbook, { ...check, seal_holds: "no", clean: "no" }, first.row),
		);
		expect(readWorkbook(second).tables.checks.rows.map(({ value }) => value.clean)).toEqual(["no"]);
		const anew = done(kitChecked(afterRound, { ...check, clean: "no" }, first.row + 3));
		expect(anew.tables["checks.csv"]?.rows).toHaveLength(1);
	});
});

describe("what keeps a line from being written is named by its column, and nothing is written", () => {
	test.each([
		["a use without a kit", kitUsed(smallUnit(), { ...used, kit: " " }), ["kit"]],
		["a use without a time", kitUsed(smallUnit(), { ...used, at: "" }), ["at"]],
		["a round without kits", roundDone(smallUnit(), { ...round, kits: "" }), ["kits"]],
		["a round without a start", roundDone(smallUnit(), { ...round, start: "" }), ["start"]],
		[
			"the same round again",
			roundDone(done(roundDone(smallUnit(), round)), { ...round, start: "7:00" }),
			["start"],
		],
		["descaled perhaps", roundDone(smallUnit(), { ...round, descaled: "perhaps" }), ["descaled"]],
		[
			"a check of no known purpose",
			kitChecked(smallUnit(), { ...check, purpose: "x" }),
			["purpose"],
		],
		["litres in words", roundDone(smallUnit(), { ...round, litres: "some" }), ["litres"]],
		[
			"all passed, by nobody",
			allPassed(smallUnit(), { ...check, checked_by: "" }, PIECES),
			["checked_by"],
		],
		["a check of no kit", kitChecked(smallUnit(), { ...check, kit: "" }), ["kit"]],
	] as const)("%s", (_words, written, columns) => {
		expect(wrong(written)).toEqual(columns);
	});

	test("a blank for which something else stands is as good as a text", () => {
		for (const descaled of ["", "  ", "yes"])
			expect(roundDone(smallUnit(), { ...round, descaled }).ok).toBe(true);
	});

	test("another start, another day or a start that is none is no round written down already", () => {
		const before = done(roundDone(smallUnit(), round));
		for (const other of [{ start: "07:30" }, { date: "2027-03-01" }])
			expect(roundDone(before, { ...round, ...other }).ok).toBe(true);
		expect(wrong(roundDone(before, { kits: "A" }))).toEqual(["date", "start"]);
		expect(wrong(roundDone(before, {}))).toEqual(["kits"]);
		expect(wrong(roundDone(before, { ...round, date: ` ${DAY} `, kits: " A " }))).toEqual([
			"start",
		]);
		expect(wrong(roundDone(before, { ...round, kits: "  " }))).toEqual(["kits"]);
	});

	test("a line of a row that is there takes its place, and a blank for which a default stands is none missing", () => {
		const one = done(kitUsed(smallUnit(), used));
		const again = lineWritten(one, usesSheet, { ...used, kit: " B " }, 0);
		expect(again).toMatchObject({ ok: true, row: 0 });
		expect(done(again).tables["uses.csv"]?.rows.map((row) => row[1])).toEqual(["B"]);
		expect(lineWritten(one, usesSheet, used, 1)).toMatchObject({ ok: true, row: 1 });
		expect(lineWritten(one, usesSheet, used)).toMatchObject({ ok: true, row: 1 });
		expect(wrong(kitUsed(smallUnit(), { at: used.at, what: "used" }))).toEqual(["kit"]);
		expect(wrong(allPassed(smallUnit(), { checked_at: DAY, kit: "A" }, PIECES))).toEqual([
			"checked_by",
		]);
		expect(wrong(allPassed(smallUnit(), { ...check, checked_by: " " }, PIECES))).toEqual([
			"checked_by",
		]);
	});

	test("a test that passed says yes, but of damage no", () => {
		expect(checkedTests.map((test) => [answerOf(test, true), answerOf(test, false)])).toEqual(
			checkedTests.map((test) => (test === "damage" ? ["no", "yes"] : ["yes", "no"])),
		);
	});

	test("a need that found none ready has no kit", () => {
		const none = { at: `${DAY} 03:00`, what: "none_ready" };
		expect(kitUsed(smallUnit(), none).ok).toBe(true);
	});
});
