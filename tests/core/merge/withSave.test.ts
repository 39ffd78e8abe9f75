import { describe, expect, test } from "vitest";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import type { TextTable, Workbook } from "../../../src/core/workbook.ts";
import { tableOf } from "../smallUnit.ts";

const KITS = "kits.csv";
const UNIT = "unit.csv";
const unit = tableOf("setting,value\nbeds,2");
const kits = (...lines: string[]): Workbook => ({
	tables: { [KITS]: tableOf(["kit,status,note", ...lines].join("\n")), [UNIT]: unit },
});
const of = (table: TextTable | undefined): Workbook => ({
	tables: { [KITS]: table as TextTable, [UNIT]: unit },
});
const save = (id: string) => ({ id, at: "2027-03-01T10:00", by: "Amina" });
const start = kits("A,in_service,", "B,in_service,torn");
const root = rootDescent(start);
const was = root.sheets[KITS];
const [a, b] = was?.origins ?? [];
const after = (now: Workbook, id = "one", before = root) => withSave(before, now, save(id));
const changes = (descent: typeof root) =>
	[...(descent.sheets[KITS]?.changed ?? [])].map(([row, cells]) => [
		row,
		Object.fromEntries(cells),
	]);

describe("a save of nothing new is none", () => {
	test.each([
		["the same workbook", start],
		["the same texts", kits("A,in_service,", "B,in_service,torn")],
	])("%s", (_what, now) => {
		expect(after(now)).toBe(root);
	});
});

test("what changed is remembered with its save; a sheet that did not stays the same", () => {
	const next = after(kits("A,in_service,", "B,lost,torn"));
	expect(next.saves).toEqual([...root.saves, save("one")]);
	expect(next.sheets[UNIT]).toBe(root.sheets[UNIT]);
	expect(next.sheets[KITS]?.origins).toEqual([a, b]);
	expect(changes(next)).toEqual([[b, { status: "one" }]]);
	const third = after(kits("A,in_service,lent", "B,found,"), "two", next);
	expect(changes(third)).toEqual([
		[b, { status: "two", note: "two" }],
		[a, { note: "two" }],
	]);
	expect(changes(after(kits("A,in_service,", "B,lost,"), "two", next))).toEqual([
		[b, { status: "one", note: "two" }],
	]);
});

test("a row that is new has its save and its place in it; one that is gone, the save in which it went", () => {
	const one = after(kits("A,in_service,", "B,lost,torn"));
	const next = after(kits("C,new,", "A,in_service,", "D,new,"), "two", one);
	expect(next.sheets[KITS]?.origins).toEqual(["two.0", a, "two.2"]);
	expect([...(next.sheets[KITS]?.gone ?? [])]).toEqual([[b, "two"]]);
	expect(changes(next)).toEqual([]);
	expect([...(after(kits(), "three", next).sheets[KITS]?.gone.keys() ?? [])]).toHaveLength(4);
});

test.each([
	["a row more", kits("A,in_service,", "B,in_service,torn", "C,,")],
	["a cell more", kits("A,in_service,,", "B,in_service,torn")],
	["another header", of(tableOf("kit,status,remark\nA,in_service,\nB,in_service,torn"))],
])("%s is a change", (_what, now) => {
	expect(after(now).saves).toHaveLength(2);
});

test("columns are known by their names: moved they are the same, and a blank new one says nothing", () => {
	const moved = of(tableOf("note,kit,status,shelf\n,A,in_service,\ntorn,B,in_service,3"));
	expect(changes(after(moved))).toEqual([[b, { shelf: "one" }]]);
	const rows = start.tables[KITS]?.rows ?? [];
	const named = of({ header: ["kit", "status", "remark"], rows });
	expect(changes(after(named))).toEqual([[b, { note: "one", remark: "one" }]]);
});

test("a sheet that comes new begins with this save", () => {
	const next = after({ tables: { ...start.tables, "extra.csv": tableOf("x\n1\n2") } });
	expect(next.sheets["extra.csv"]?.origins).toEqual(["one.0", "one.1"]);
	expect(next.sheets[KITS]).toBe(was);
	expect(next.saves).toHaveLength(2);
});

describe("lines of a log", () => {
	const USES = "uses.csv";
	const log = (...lines: string[]): Workbook => ({
		tables: { [USES]: tableOf(["at,kit,what,by,note,id", ...lines].join("\n")) },
	});
	const origins = (before: Workbook, now: Workbook) =>
		withSave(rootDescent(before), now, save("one")).sheets[USES]?.origins.map((origin) =>
			origin.replace(/^=[^.]*/, "="),
		);

	test.each([
		["put right, it is the same", ["01:00,A,used,,,"], ["01:00,A,used,Jo,,"], ["=.0"]],
		["of which half is another, too", ["01:00,A,used,,,"], ["02:00,A,opened,,,", ""], ["one.0"]],
		["that got a mark, too", ["01:00,A,used,,,"], ["01:00,A,used,,,x"], ["=.0"]],
		["with a mark, put right, is that line", ["01:00,A,used,,,x"], ["01:00,A,used,Jo,,x"], ["=.0"]],
		["with another mark is another", ["01:00,A,used,,,x"], ["01:00,A,used,Jo,,y"], ["one.0"]],
		["with a mark is none that had none", ["01:00,A,used,,,"], ["01:00,A,used,Jo,,y"], ["one.0"]],
		["nor the other way round", ["01:00,A,used,,,x"], ["01:00,A,used,Jo,,"], ["one.0"]],
		[
			"between two that are known is one that was there",
			["01:00,A,used,,,", "02:00,B,used,,,", "03:00,C,used,,,"],
			["01:00,A,used,,,", "02:00,B,used,Jo,,", "03:00,C,used,,,"],
			["=.0", "=.1", "=.2"],
		],
		[
			"and not one from elsewhere",
			["02:00,B,used,,,", "01:00,A,used,,,", "03:00,C,used,,,"],
			["01:00,A,used,,,", "02:00,B,used,Jo,,", "03:00,C,used,,,"],
			["=.1", "one.1", "=.2"],
		],
		[
			"several, each the one it has most in common with",
			["01:00,A,used,,,", "02:00,B,used,,,"],
			["02:00,B,used,Jo,,", "01:00,A,used,Jo,,"],
			["=.1", "=.0"],
		],
	])("a line without a mark %s", (_what, before, now, expected) => {
		expect(origins(log(...before), log(...now))).toEqual(expected);
	});
});
