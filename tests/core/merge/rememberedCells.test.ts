import { expect, test } from "vitest";
import type { Choices } from "../../../src/core/merge/conflict.ts";
import type { Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { rootDescent, unknownDescent } from "../../../src/core/merge/rootDescent.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import { tableOf } from "../smallUnit.ts";

const KITS = "kits.csv";
const kits = (...lines: string[]) => ({
	tables: { [KITS]: tableOf(["kit,status,note", ...lines].join("\n")) },
});
const root = (...lines: string[]): Copy => {
	const workbook = kits(...lines);
	return { workbook, descent: rootDescent(workbook) };
};
const saved = ({ descent }: Copy, id: string, ...lines: string[]): Copy => {
	const workbook = kits(...lines);
	return { workbook, descent: withSave(descent, workbook, { id, at: "2027-03-01T10:00", by: id }) };
};
const rowsOf = ({ workbook }: Copy) => workbook.tables[KITS]?.rows.map((row) => row.join());
/** Which cells of the first row changed after it was entered, and in which save. */
const remembered = ({ descent }: Copy) => {
	const { origins = [], changed } = descent.sheets[KITS] ?? {};
	return Object.fromEntries(changed?.get(origins[0] ?? "") ?? []);
};

const start = root("A,ready,", "B,ready,");
test.each([
	["changed in one cell each", "A,ready,torn", "A,lost,", { note: "ours", status: "theirs" }],
	["changed here alone", "A,ready,torn", "A,ready,", { note: "ours" }],
	["changed there alone", "A,ready,", "A,ready,torn", { note: "theirs" }],
	["changed alike", "A,ready,torn", "A,ready,torn", { note: "ours" }],
	["not changed", "A,ready,", "A,ready,", {}],
])("a row %s remembers which save each cell is from", (_what, ours, theirs, expected) => {
	const [one, other] = [
		saved(start, "ours", ours, "B,ready,x"),
		saved(start, "theirs", theirs, "B,ready,y"),
	];
	expect(remembered(mergeCopies(one, other))).toEqual(expected);
});

test("of rows entered in both copies the texts of one birth are as old as the row, the other's are changes", () => {
	const [one, other] = [root("A,ready,"), root("A,ready,torn")];
	const [first, second] = [one, other].map(({ descent }) => descent.saves[0]?.id as string);
	for (const together of [mergeCopies(one, other), mergeCopies(other, one)]) {
		expect(rowsOf(together)).toEqual(["A,ready,torn"]);
		const born = together.descent.sheets[KITS]?.origins[0]?.split(".")[0];
		expect(born).toBe([first, second].sort()[0]);
		expect(remembered(together)).toEqual(born === second ? {} : { note: second });
	}
});

test("a cell that was changed and changed back remembers the later save", () => {
	const torn = saved(start, "first", "A,ready,torn", "B,ready,");
	const lent = saved(torn, "second", "A,ready,lent", "B,ready,");
	const back = saved(lent, "third", "A,ready,torn", "B,ready,");
	for (const [one, other] of [
		[torn, back],
		[back, torn],
	] as const)
		expect(remembered(mergeCopies(one, other))).toEqual({ note: "third" });
});

test("a cell that was filled and emptied on purpose is asked, one never filled is not", () => {
	const other = saved(start, "theirs", "A,ready,", "B,ready,", "C,ready,torn");
	const never = saved(start, "ours", "A,ready,", "B,ready,", "C,ready,");
	const filled = saved(start, "ours", "A,ready,", "B,ready,", "C,ready,lent");
	const emptied = saved(filled, "later", "A,ready,", "B,ready,", "C,ready,");
	expect(mergeCopies(never, other).conflicts).toEqual([]);
	expect(mergeCopies(emptied, other).conflicts).toMatchObject([
		{ row: "C", column: "note", ours: { text: "" }, theirs: { text: "torn" } },
	]);
});

test("a row that is kept although one deleted it is deleted no more, whichever copy comes again", () => {
	const [gone, kept] = [
		saved(start, "gone", "B,ready,"),
		saved(start, "kept", "A,lost,", "B,ready,"),
	];
	const { conflicts } = mergeCopies(gone, kept);
	const together = mergeCopies(gone, kept, new Map([[conflicts[0]?.key as string, "theirs"]]));
	const { origins = [], gone: deleted } = together.descent.sheets[KITS] ?? {};
	expect(origins.filter((origin) => deleted?.has(origin))).toEqual([]);
	for (const again of [start, gone, kept]) {
		expect(rowsOf(mergeCopies(together, again))).toEqual(["A,lost,", "B,ready,"]);
		expect(mergeCopies(again, together).conflicts).toEqual([]);
	}
});

test("each conflict is chosen by itself", () => {
	const [one, other] = [
		saved(start, "ours", "A,lost,torn", "B,lost,"),
		saved(start, "theirs", "A,found,lent", "B,found,"),
	];
	const { conflicts } = mergeCopies(one, other);
	expect(new Set(conflicts.map(({ key }) => key)).size).toBe(3);
	const chosen: Choices = new Map([[conflicts[1]?.key as string, "theirs"]]);
	const together = mergeCopies(one, other, chosen);
	expect(rowsOf(together)).toEqual(["A,lost,lent", "B,lost,"]);
	expect(remembered(together)).toEqual({ status: "ours", note: "theirs" });
});

test("spaces around a text are no change", () => {
	const together = mergeCopies(saved(start, "ours", "A, ready,", "B,ready,"), start);
	expect(together.changes).toEqual([]);
	const both = mergeCopies(start, saved(start, "theirs", "A,ready ,", "B,ready,"));
	expect([both.changes, both.conflicts]).toEqual([[], []]);
});

test("rows that one deleted and the other changed are chosen each by itself, on whichever side", () => {
	const gone = saved(start, "gone");
	const kept = saved(start, "kept", "A,lost,", "B,ready,torn");
	for (const side of ["ours", "theirs"] as const) {
		const [one, other] = side === "ours" ? [kept, gone] : [gone, kept];
		const { conflicts } = mergeCopies(one, other);
		expect(conflicts.map((conflict) => conflict[side].text)).toEqual(["A, lost", "B, ready, torn"]);
		const without = conflicts[0]?.[side === "ours" ? "theirs" : "ours"];
		expect([without?.text, without?.save?.id]).toEqual([undefined, "gone"]);
		const choices: Choices = new Map([
			[conflicts[0]?.key as string, side],
			[conflicts[1]?.key as string, side === "ours" ? "theirs" : "ours"],
		]);
		const together = mergeCopies(one, other, choices);
		expect(rowsOf(together)).toEqual(["A,lost,"]);
		expect([together.changes, together.conflicts.length]).toEqual([[], 2]);
	}
});

test("rows that nobody changed remember nothing, and a conflict that nobody chose stays with ours", () => {
	expect(mergeCopies(start, start).descent.sheets[KITS]?.changed.size).toBe(0);
	const [one, other] = [
		saved(start, "ours", "A,ready,", "B,ready,x"),
		saved(start, "theirs", "A,ready,"),
	];
	expect(rowsOf(mergeCopies(one, other))).toEqual(["A,ready,", "B,ready,x"]);
	expect(rowsOf(mergeCopies(other, one))).toEqual(["A,ready,"]);
});

test("a line of a log that says something else in each copy is still one", () => {
	const log = (line: string) => ({
		tables: { "uses.csv": tableOf(`at,kit,what,note\n${line}\n2027-03-02 08:00,B,used,`) },
	});
	const descent = rootDescent(log("2027-03-01 08:00,A,used,"));
	const copy = (line: string, id: string): Copy => {
		const workbook = log(line);
		return { workbook, descent: withSave(descent, workbook, { id, at: "", by: "" }) };
	};
	const [one, other] = [
		copy("2027-03-01 09:00,A,used,", "ours"),
		copy("2027-03-01 08:00,A,used,late", "theirs"),
	];
	for (const { workbook, conflicts } of [mergeCopies(one, other), mergeCopies(other, one)]) {
		expect(workbook.tables["uses.csv"]?.rows.map((row) => row.join())).toEqual([
			"2027-03-01 09:00,A,used,late",
			"2027-03-02 08:00,B,used,",
		]);
		expect(conflicts).toEqual([]);
	}
});

test("a sheet that another program changed is known by its name and texts", () => {
	const table = tableOf("kit\nA");
	const ids = [
		unknownDescent(KITS, table),
		unknownDescent("uses.csv", table),
		unknownDescent(KITS, tableOf("kit\nB")),
	].map(({ save }) => save.id);
	expect(new Set(ids).size).toBe(3);
	for (const id of ids) expect(id).toMatch(/^=[0-9a-z]{14}$/);
	const [root] = rootDescent({ tables: { [KITS]: table } }).saves;
	for (const save of [root, unknownDescent(KITS, table).save])
		expect(save).toMatchObject({ id: expect.stringMatching(/^=/), at: "", by: "" });
});
