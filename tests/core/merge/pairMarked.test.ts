import { expect, test } from "vitest";
import { columnNames } from "../../../src/core/merge/columnNames.ts";
import { pairMarked } from "../../../src/core/merge/pairMarked.ts";
import { noPairs } from "../../../src/core/merge/pairs.ts";
import { withoutBlankEnds } from "../../../src/core/withoutBlankEnds.ts";
import { tableOf } from "../smallUnit.ts";

/** Which row of the other table each row of the first one is, by their marks and texts. */
function paired(one: string, other: string): number[] {
	const [ours, theirs] = [tableOf(`id,kit,what\n${one}`), tableOf(`id,kit,what\n${other}`)];
	const keys = ({ rows }: typeof ours) => ({ id: (row: number) => rows[row]?.[0] ?? "" }) as never;
	const pairs = noPairs(ours, theirs);
	pairMarked(
		pairs,
		[ours, keys(ours), [...ours.rows.keys()]],
		[theirs, keys(theirs), [...theirs.rows.keys()]],
	);
	return [...pairs.ofOne];
}

test.each([
	["a line that alone has its mark is that line, whatever it says", "x,A,used", "x,B,opened", [0]],
	["of two with one mark the one most alike", "x,B,opened", "x,A,used\nx,B,used", [1]],
	["nor is one of two that have little in common", "x,A,used", "x,B,opened\nx,C,opened", [-1]],
	["one of two with its mark, the one most alike", "x,A,used\nx,B,opened", "x,B,opened", [-1, 0]],
	["two of one mark, each its own", "x,A,used\nx,B,opened", "x,B,opened\nx,A,used", [1, 0]],
	["a line without a mark is none of them", ",A,used", ",A,used", [-1]],
	["nor one of another mark", "x,A,used", "y,A,used", [-1]],
] as const)("%s", (_what, one, other, expected) => {
	expect(paired(one, other)).toEqual(expected);
});

test("a mark whose line is known already is nobody else's", () => {
	const table = tableOf("id,kit,what\nx,A,used");
	const keys = { id: () => "x" } as never;
	const pairs = noPairs(table, table);
	pairMarked(pairs, [table, keys, [0]], [table, keys, []]);
	expect([[...pairs.ofOne], [...pairs.ofOther]]).toEqual([[-1], [-1]]);
});

test("columns have names of their own, and so have cells beyond the header", () => {
	expect(
		columnNames({ header: ["day ", "day", "", ""], rows: [["", "", "", "", "stray"]] }),
	).toEqual(["day", "day\n2", "?\n1", "?\n2", "\n1"]);
});

test("a table of blanks has no column and no row left", () => {
	expect(withoutBlankEnds({ header: ["", " "], rows: [["", ""], [" "]] })).toEqual({
		header: [],
		rows: [],
	});
	const kept = {
		header: ["a", ""],
		rows: [
			["1", "", "x"],
			["", ""],
		],
		lines: [2, 5],
	};
	expect(withoutBlankEnds(kept)).toEqual({ header: ["a"], rows: [["1", "", "x"]], lines: [2] });
	const some = {
		header: ["a", ""],
		rows: [
			["1", "x"],
			["2", ""],
		],
	};
	expect(withoutBlankEnds(some)).toBe(some);
	const full = { header: ["a"], rows: [["1"]] };
	expect(withoutBlankEnds(full)).toBe(full);
});
