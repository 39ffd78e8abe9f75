import { describe, expect, test } from "vitest";
import type { Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { bornTogether } from "../../../src/core/merge/rootDescent.ts";
import type { TextTable, Workbook } from "../../../src/core/workbook.ts";
import { choose, linesOf, next, root, sheet, told } from "./copies.ts";

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

	test.each([
		["in the order of their days", ["2027-03-01T10:00", "2027-03-04T10:00"]],
		["and in another", ["2027-03-04T10:00", "2027-03-01T10:00"]],
	])("parted at the latest save that both know, %s", (_, days) => {
		const saves = [...days.map((at, i) => ({ id: `s${i}`, at, by: "" }))];
		const only = { id: "mine", at: "2027-03-09T10:00", by: "" };
		const [one, other] = [
			{ ...start, descent: { ...start.descent, saves: [...saves, only] } },
			{ ...start, descent: { ...start.descent, saves } },
		];
		expect(mergeCopies(one, other).parted?.at).toBe("2027-03-04T10:00");
		expect(mergeCopies(other, one).parted?.at).toBe("2027-03-04T10:00");
	});

	test.each(["ours", "theirs"] as const)("name a change that only %s has", (from) => {
		const [changed, same] = [kits(`${A}torn`, B), kits(A, B)];
		const { together } = from === "ours" ? meet(changed, same) : meet(same, changed);
		expect(together.changes).toMatchObject([
			{ from, kind: "changed", row: "A", column: "note", before: "", after: "torn" },
		]);
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

	test("name a row that one changed and the other deleted by what it says, without its blanks", () => {
		const { together } = meet(kits(A, "B,bag set,in_service,  ,torn"), kits(A));
		expect(told(together)).toEqual([["B", "", "B, bag set, in_service, torn", undefined]]);
	});

	test("which each emptied a part of the last row have none of it left, nor remember one", () => {
		const plain = (...lines: string[]) => sheet("own.csv", "a,b", ...lines);
		const from = root(plain("1,2", "3,4"));
		const [one, other] = [
			next(from, plain("1,2", ",4"), "Amina"),
			next(from, plain("1,2", "3,"), "Jo"),
		];
		const together = mergeCopies(one, other);
		expect(linesOf(together, "own.csv")).toEqual(["a,b", "1,2"]);
		expect(together.descent.sheets["own.csv"]?.origins).toHaveLength(1);
	});

	test.each(["ours", "theirs"] as const)(
		"take a text changed and put back, by %s, for one that nobody changed",
		(by) => {
			const back = next(next(start, kits(`${A}torn`, B), "torn"), kits(A, B), "back");
			const other = next(start, kits(A, `${B}lent`), "lent");
			const together = by === "ours" ? mergeCopies(back, other) : mergeCopies(other, back);
			const third = next(start, kits(`${A}washed`, B), "third");
			const all = mergeCopies(together, third);
			expect(all.conflicts).toEqual([]);
			expect(linesOf(all, KITS).slice(1)).toEqual([`${A}washed`, `${B}lent`]);
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

	test("take a text over spaces, which nobody filled in", () => {
		const together = mergeCopies(
			root(kits("A,bag set,in_service,  ,torn")),
			root(kits(`${A}torn`)),
		);
		expect(together.conflicts).toEqual([]);
		expect(linesOf(together, KITS).slice(1)).toEqual([`${A}torn`]);
	});

	test("have lines that stand twice twice, and not four times", () => {
		const twice = uses(use("02:00", "A"), use("02:00", "A"));
		expect(linesOf(mergeCopies(root(twice), root(uses(use("02:00", "A")))), USES)).toHaveLength(3);
		const more = uses(use("02:00", "A"), use("02:00", "A"), use("05:00", "B"));
		expect(linesOf(mergeCopies(root(twice), root(more)), USES)).toHaveLength(4);
	});

	test("know every line of a large visit again, of which one is missing", () => {
		const line = (at: number) => use(`0${Math.floor(at / 60)}:${10 + (at % 50)}`, `K${at}`, "v1");
		const visit = Array.from({ length: 101 }, (_, at) => line(at));
		const together = mergeCopies(root(uses(...visit.slice(1))), root(uses(...visit)));
		expect(linesOf(together, USES)).toHaveLength(1 + 101);
		expect(together.changes.map(({ kind }) => kind)).toEqual(["added"]);
	});

	test("a sheet that one of them lacks stands as it is in the other", () => {
		const together = mergeCopies(root(kits(A)), root(uses(use("02:00", "A"))));
		expect(linesOf(together, KITS).slice(1)).toEqual([A]);
		expect(linesOf(together, USES)).toHaveLength(2);
	});
});

test("a text that is new in a row which another program wrote is asked about, though it was blank", () => {
	const { tables } = kits(A);
	const descent = {
		saves: [{ id: "=x", at: "", by: "" }],
		sheets: {
			[KITS]: { ...bornTogether(tables[KITS] as TextTable, "=x"), altered: true as const },
		},
	};
	const altered: Copy = { workbook: { tables }, descent };
	const together = mergeCopies(altered, next(altered, kits(`${A}torn`), "one"));
	expect(told(together)).toEqual([["A", "note", "", "torn"]]);
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

test("a conflict's line is that of the file: a text of several lines takes several", () => {
	const { header } = kits(A).tables[KITS] as TextTable;
	const of = (note: string): Workbook => ({
		tables: {
			[KITS]: {
				header,
				rows: [
					["A", "bag set", "in_service", "", "lent\nto the next ward"],
					["B", "bag set", "in_service", "", note],
				],
			},
		},
	});
	const start = root(of(""));
	const { conflicts } = mergeCopies(
		next(start, of("torn"), "Amina"),
		next(start, of("washed"), "Jo"),
	);
	expect(conflicts).toMatchObject([{ row: "B", line: 4 }]);
});
