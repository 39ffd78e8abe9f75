import { describe, expect, test } from "vitest";
import type { Conflict, Side } from "../../../src/core/merge/conflict.ts";
import type { Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies, type Together } from "../../../src/core/merge/mergeCopies.ts";
import { bornTogether, rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { tableOf } from "../smallUnit.ts";

/** A workbook of one sheet, by its lines. */
const sheet = (file: string, ...lines: string[]): Workbook => ({
	tables: { [file]: tableOf(lines.join("\n")) },
});
const root = (workbook: Workbook): Copy => ({ workbook, descent: rootDescent(workbook) });
const next = ({ descent }: Copy, workbook: Workbook, id: string): Copy => ({
	workbook,
	descent: withSave(descent, workbook, { id, at: `2027-03-0${id.length}T10:00`, by: id }),
});
const linesOf = ({ workbook }: Copy, file: string) => {
	const { header = [], rows = [] } = workbook.tables[file] ?? {};
	return [header, ...rows].map((row) => row.join(","));
};
const told = ({ conflicts }: Together) =>
	conflicts.map(({ row, column, ours, theirs }) => [row, column, ours.text, theirs.text]);
const choose = ({ conflicts }: Together, side: Side) =>
	new Map(conflicts.map(({ key }: Conflict) => [key, side]));

const KITS = "kits.csv";
const kits = (...lines: string[]) => sheet(KITS, "kit,kind,status,ready_since,note", ...lines);
const A = "A,bag set,in_service,2027-02-27,";
const B = "B,bag set,in_service,2027-02-28,";
const USES = "uses.csv";
const uses = (...lines: string[]) => sheet(USES, "at,kit,what,by,note,id", ...lines);
const use = (at: string, kit: string, id = "") => `2027-03-01 ${at},${kit},used,,,${id}`;

describe("copies that come from one save", () => {
	const start = root(kits(A, B));
	const meet = (ours: Workbook, theirs: Workbook) => {
		const [one, other] = [next(start, ours, "Amina"), next(start, theirs, "Jo")];
		return { one, other, together: mergeCopies(one, other) };
	};

	test("say whose the texts of a conflict are, and since when", () => {
		const { together } = meet(kits(`${A}torn`, B), kits(`${A}lent`, B));
		expect(together.conflicts).toMatchObject([
			{
				file: KITS,
				row: "A",
				column: "note",
				line: 2,
				ours: { text: "torn", save: { by: "Amina", at: "2027-03-05T10:00" } },
				theirs: { text: "lent", save: { by: "Jo", at: "2027-03-02T10:00" } },
			},
		]);
		expect(together.parted?.id).toBe(start.descent.saves[0]?.id);
	});

	test("name what came from where", () => {
		const { together } = meet(kits(A, B, "C,bag set,in_service,,"), kits(`${A}torn`));
		expect(together.changes).toEqual([
			{
				file: KITS,
				from: "theirs",
				kind: "changed",
				row: "A",
				column: "note",
				before: "",
				after: "torn",
			},
			{ file: KITS, from: "theirs", kind: "deleted", row: "B" },
			{ file: KITS, from: "ours", kind: "added", row: "C" },
		]);
		expect(linesOf(together, KITS).slice(1)).toEqual([`${A}torn`, "C,bag set,in_service,,"]);
	});

	test.each([
		["ours", 2],
		["theirs", 1],
	] as const)(
		"ask of a row that one changed and the other deleted; %s was chosen",
		(side, rows) => {
			const { one, other, together } = meet(kits(A, `${B}torn`), kits(A));
			expect(told(together)).toEqual([
				["B", "", "B, bag set, in_service, 2027-02-28, torn", undefined],
			]);
			const chosen = mergeCopies(one, other, choose(together, side));
			expect(linesOf(chosen, KITS)).toHaveLength(1 + rows);
			// Once settled it is not asked again, by whomever.
			for (const again of [
				mergeCopies(chosen, other),
				mergeCopies(other, chosen),
				mergeCopies(chosen, one),
			]) {
				expect(again.conflicts).toEqual([]);
				expect(linesOf(again, KITS)).toHaveLength(1 + rows);
			}
		},
	);

	test("take a row back that was deleted and entered again", () => {
		const gone = next(start, kits(A), "gone");
		const back = next(gone, kits(A, B), "back");
		expect(linesOf(mergeCopies(back, start), KITS).slice(1)).toEqual([A, B]);
		expect(linesOf(mergeCopies(start, back), KITS).slice(1)).toEqual([A, B]);
	});

	test("of three people are the same whoever meets whom first", () => {
		const of = (line: string, id: string) => next(start, kits(A, B, line), id);
		const [x, y, z] = ["X", "Y", "Z"].map((kit) =>
			of(`${kit},bag set,in_service,,`, `by${kit}`),
		) as [Copy, Copy, Copy];
		const one = mergeCopies(mergeCopies(x, y), z);
		const other = mergeCopies(x, mergeCopies(z, y));
		expect(linesOf(one, KITS).sort()).toEqual(linesOf(other, KITS).sort());
		expect(mergeCopies(one, other).changes).toEqual([]);
	});

	test("keep columns that only one of them has, and cells beyond a header", () => {
		const ours = sheet(KITS, "kit,kind,status,ready_since,note,shelf", `${A},3`, B);
		const theirs = kits(A, B, "C,bag set,in_service,,,stray");
		const { together } = meet(ours, theirs);
		expect(linesOf(together, KITS)).toEqual([
			"kit,kind,status,ready_since,note,shelf",
			`${A},3`,
			B,
			"C,bag set,in_service,,,,stray",
		]);
	});
});

describe("lines of a log", () => {
	test("entered in both copies stand in the order of their days", () => {
		const start = root(uses(use("01:00", "A", "s1")));
		const ours = next(
			start,
			uses(use("01:00", "A", "s1"), use("05:00", "B", "a1"), use("09:00", "A", "a2")),
			"ours",
		);
		const theirs = next(start, uses(use("01:00", "A", "s1"), use("07:00", "C", "b1")), "theirs");
		const hours = (copy: Copy) => linesOf(copy, USES).map((line) => line.slice(11, 16));
		expect(hours(mergeCopies(ours, theirs)).slice(1)).toEqual(["01:00", "05:00", "07:00", "09:00"]);
		expect(hours(mergeCopies(theirs, ours))).toEqual(hours(mergeCopies(ours, theirs)));
	});

	test.each([
		[
			"of two marks are two lines, whatever they say",
			use("02:00", "A", "a1"),
			use("02:00", "A", "b1"),
			2,
		],
		["of one mark are one line", use("02:00", "A", "a1"), use("02:00", "A", "a1"), 1],
		[
			"without a mark are one line where they say the same",
			use("02:00", "A"),
			use("02:00", "A"),
			1,
		],
		["without a mark are two where they do not", use("02:00", "A"), use("02:00", "B"), 2],
		["of which one lost its mark are one", use("02:00", "A", "a1"), use("02:00", "A"), 1],
	])("%s", (_, ours, theirs, count) => {
		const together = mergeCopies(root(uses(ours)), root(uses(theirs)));
		expect(linesOf(together, USES)).toHaveLength(1 + count);
		expect(together.conflicts).toEqual([]);
	});

	test("of one visit are known among each other by what they say, also where one was put right", () => {
		const [one, other] = [use("02:00", "A", "v"), use("05:00", "B", "v")];
		const right = other.replace("used", "opened");
		const together = mergeCopies(root(uses(one, other)), root(uses(one, right)));
		expect(told(together)).toEqual([["2027-03-01 05:00, B, used", "what", "used", "opened"]]);
		expect(linesOf(together, USES)).toHaveLength(3);
	});

	test("of one visit, of which each copy deleted another, are both gone", () => {
		const [one, other] = [use("02:00", "A", "v"), use("05:00", "B", "v")];
		const start = root(uses(one, other));
		const together = mergeCopies(
			next(start, uses(one), "ours"),
			next(start, uses(other), "theirs"),
		);
		expect(linesOf(together, USES)).toHaveLength(1);
		expect(together.conflicts).toEqual([]);
	});

	test("without a mark, said twice in one copy, stand twice", () => {
		const [once, twice] = [
			root(uses(use("02:00", "A"))),
			root(uses(use("02:00", "A"), use("02:00", "A"))),
		];
		expect(linesOf(mergeCopies(once, twice), USES)).toHaveLength(3);
		expect(linesOf(mergeCopies(twice, twice), USES)).toHaveLength(3);
	});
});

describe("copies of which nothing is known", () => {
	test("take what only one of them has, and ask what differs", () => {
		const [ours, theirs] = [
			kits(`${A}torn`, B),
			kits(A, "B,bag set,out_of_service,2027-02-28,", "C,bag set,in_service,,"),
		];
		const together = mergeCopies(root(ours), root(theirs));
		expect(told(together)).toEqual([["B", "status", "in_service", "out_of_service"]]);
		expect(linesOf(together, KITS).slice(1)).toEqual([`${A}torn`, B, "C,bag set,in_service,,"]);
		expect(together.parted).toBe(undefined);
	});

	test("ask of a quantity in a sheet where a name may stand twice, and do not count both", () => {
		const usage = (...lines: string[]) =>
			root(sheet("usage.csv", "item,basis,quantity,note", ...lines));
		const together = mergeCopies(
			usage("gauze,kit,2,dry"),
			usage("gauze,kit,3,dry", "gauze,kit,1,wipe"),
		);
		expect(told(together)).toEqual([["gauze, kit", "quantity", "2", "3"]]);
		expect(linesOf(together, "usage.csv")).toHaveLength(3);
	});

	test("take a text over a blank, whichever side it is on", () => {
		for (const [ours, theirs] of [
			[kits(`${A}torn`), kits(A)],
			[kits(A), kits(`${A}torn`)],
		] as const) {
			const together = mergeCopies(root(ours), root(theirs));
			expect(together.conflicts).toEqual([]);
			expect(linesOf(together, KITS).slice(1)).toEqual([`${A}torn`]);
		}
	});

	test("a sheet that one of them lacks stands as it is in the other", () => {
		const together = mergeCopies(root(kits(A)), root(uses(use("02:00", "A"))));
		expect(linesOf(together, KITS).slice(1)).toEqual([A]);
		expect(linesOf(together, USES)).toHaveLength(2);
	});
});

test("a sheet of which half is lost, or that another program changed, takes no line away and is asked about", () => {
	const start = root(kits(A, B));
	const table = kits("A,bag set,out_of_service,2027-02-27,").tables[KITS];
	if (!table) throw new Error("a table");
	const altered: Copy = {
		workbook: { tables: { [KITS]: table } },
		descent: {
			saves: [...start.descent.saves, { id: "=x", at: "", by: "" }],
			sheets: { [KITS]: { ...bornTogether(table, "=x"), altered: true } },
		},
	};
	for (const [ours, theirs] of [
		[start, altered],
		[altered, start],
	] as const) {
		const together = mergeCopies(ours, theirs);
		expect(together.conflicts.map(({ column }) => column)).toEqual(["status"]);
		expect(linesOf(together, KITS)).toContain(B);
	}
});
