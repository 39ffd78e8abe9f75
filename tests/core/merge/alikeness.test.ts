import { expect, test } from "vitest";
import { alikeness } from "../../../src/core/merge/alikeness.ts";
import { tableOf } from "../smallUnit.ts";

test.each([
	["the same, but for its mark", "x,A,used,", "y,A,used,", 1],
	["two of three", "x,A,used,late", "x,A,used,early", 2 / 3],
	["a text beside a blank is another", "x,A,used,late", "x,A,used,", 2 / 3],
	["blanks on both sides do not count", "x,A,,", "x,A,,", 1],
	["nothing on either side", "x,,,", "x,,,", 0],
	["nothing in common", "x,A,used,", "x,B,opened,", 0],
	["spaces around a text", "x, A ,used,", "x,A,used,", 1],
] as const)("rows have so much in common: %s", (_what, one, other, share) => {
	const table = (line: string) => tableOf(`id,kit,what,note\n${line}`);
	expect(alikeness(table(one), table(other))(0, 0)).toBe(share);
});

test("a column that only one of the tables has counts where it says something", () => {
	const share = alikeness(tableOf("kit,what\nA,used"), tableOf("kit,what,by\nA,used,Ama"));
	expect(share(0, 0)).toBe(2 / 3);
	const back = alikeness(tableOf("kit,what,by\nA,used,Ama"), tableOf("kit,what\nA,used"));
	expect(back(0, 0)).toBe(2 / 3);
	const blank = alikeness(tableOf("kit,what\nA,used"), tableOf("kit,what,by\nA,used,"));
	expect(blank(0, 0)).toBe(1);
});
