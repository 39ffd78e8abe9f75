import { expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { LONGEST_NOTE } from "../../../src/core/values/note.ts";
import { everything } from "../contentOf.ts";
import { smallUnit } from "../smallUnit.ts";

/** Kits A and B; a use, a round and checks, of which one cannot be read, with the marks given. */
const recorded = (a: string, b: string) =>
	smallUnit({
		"uses.csv": `at,kit,what,by,note
			2027-02-26 08:00,${a},used,,
			2027-02-27 09:00,${b},opened,,
			2027-02-27 10:00,,none_ready,,`,
		"rounds-done.csv": `date,start,ended,kits
			2027-02-26,14:00,15:40,${b} ${a}`,
		"checks.csv": `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note,purpose
			2027-02-26 17:00,${a},4,yes,yes,yes,yes,yes,,,after_round
			2027-02-26 17:10,${b},many,yes,yes,yes,yes,yes,,,after_round`,
	});

test("a kit written with small letters is the register's", () => {
	expect(everything(plan(recorded("a", "b")))).toEqual(everything(plan(recorded("A", "B"))));
	const { uses, checks } = readWorkbook(recorded("a", "b")).tables;
	expect(uses.rows.map(({ value }) => value.kit)).toEqual(["A", "B", ""]);
	expect([...checks.rows, ...checks.badRows].map(({ value }) => value.kit)).toEqual(["A", "B"]);
});

test("a line whose mark cannot be read is no kit's, and the others are", () => {
	const long = "x".repeat(LONGEST_NOTE + 1);
	const { uses } = readWorkbook(recorded("a", long)).tables;
	expect(uses.rows.map(({ value }) => value.kit)).toEqual(["A", ""]);
	expect(uses.badRows.map(({ value }) => value.kit)).toEqual([undefined]);
});

test("tables in which every kit is written as in the register stay the same objects", () => {
	const workbook = recorded("A", "B");
	const [once, again] = [readWorkbook(workbook), readWorkbook({ ...workbook })];
	expect(again.tables.uses).toBe(once.tables.uses);
	expect(again.tables.checks).toBe(once.tables.checks);
});
