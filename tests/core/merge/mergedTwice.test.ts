import { expect, test } from "vitest";
import type { Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { tableOf } from "../smallUnit.ts";

const KITS = "kits.csv";
const copy = (text: string): Copy => {
	const workbook = { tables: { [KITS]: tableOf(text) } };
	return { workbook, descent: rootDescent(workbook) };
};
const whole = ({ workbook }: Copy) => {
	const { header = [], rows = [] } = workbook.tables[KITS] ?? {};
	return [header, ...rows].map((cells) => cells.join());
};

test.each([
	[
		"a column without a name",
		["kit,note\nA,torn", "kit,note,\nA,torn,x"],
		["kit,note,", "A,torn,x"],
	],
	["two columns without a name on each side", ["kit,,\nA,1,2", ",kit,\n1,A,2"], ["kit,,", "A,1,2"]],
	[
		"a column named twice",
		["kit,note\nA,torn", "note,kit,note\ntorn,A,x"],
		["kit,note,note", "A,torn,x"],
	],
	[
		"a cell beyond the header, which no column that is added takes for its own",
		["kit\nA,stray", "kit,note\nA,torn\nB,lent"],
		["kit,note", "A,torn,stray", "B,lent"],
	],
	[
		"the same in a row that the other copy does not have",
		["kit\nA,stray", "kit,note\nB,lent"],
		["kit,note", "A,,stray", "B,lent"],
	],
	[
		"cells beyond both headers",
		["kit\nA,stray", "kit,note\nA,torn,stray"],
		["kit,note", "A,torn,stray"],
	],
])(
	"%s is there once, also after the same copy came a second time",
	(_, [our = "", their = ""], both) => {
		const [ours, theirs] = [copy(our), copy(their)];
		const together = mergeCopies(ours, theirs);
		expect(whole(together)).toEqual(both);
		expect(whole(mergeCopies(together, theirs))).toEqual(both);
		expect(whole(mergeCopies(together, ours))).toEqual(both);
	},
);

test("a column that has neither a name nor a text is not taken over: a file that is read again has none", () => {
	const [ours, theirs] = [copy("kit,note\nA,torn"), copy(",kit\n,B")];
	const both = ["kit,note", "B,", "A,torn"];
	expect(whole(mergeCopies(ours, theirs))).toEqual(both);
	expect(whole(mergeCopies(mergeCopies(ours, theirs), theirs))).toEqual(both);
});
