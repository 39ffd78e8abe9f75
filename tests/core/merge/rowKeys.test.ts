import { expect, test } from "vitest";
import { rowKeys } from "../../../src/core/merge/rowKeys.ts";
import { kitsSheet } from "../../../src/core/sheets/kits.ts";
import { unitSheet } from "../../../src/core/sheets/unit.ts";
import { usesSheet } from "../../../src/core/sheets/uses.ts";
import { tableOf } from "../smallUnit.ts";

const uses = tableOf("id,at,kit,what\n q1 ,2027-03-01,A,used\n,2027-03-01, B ,\n,,,");

test("a line of a log has its mark, spaces around it or not, and its texts without it", () => {
	const keys = rowKeys(usesSheet, uses);
	expect([0, 1, 2].map(keys.id)).toEqual(["q1", "", ""]);
	const same = rowKeys(usesSheet, tableOf("what,kit,id,at\nused, A,x,2027-03-01 "));
	expect(same.content(0)).toBe(keys.content(0));
	expect(same.content(0)).not.toBe(keys.content(1));
	expect(keys.content(2)).toBe("");
});

test("a row is named by what tells it apart in its sheet", () => {
	const kits = rowKeys(kitsSheet, tableOf("note,kit\n,A\ntorn, A \n,B\ntorn,"));
	expect(kits.key(0)).toBe(kits.key(1));
	expect(kits.key(0)).not.toBe(kits.key(2));
	expect(kits.key(3)).toBeUndefined();
});

test("in a sheet that has no marks a column called so is one like others", () => {
	for (const sheet of [unitSheet, undefined]) {
		const keys = rowKeys(sheet, tableOf("id,setting\nq1,beds\nq2,beds"));
		expect([keys.id(0), keys.id(1)]).toEqual(["", ""]);
		expect(keys.content(0)).not.toBe(keys.content(1));
	}
	expect(rowKeys(undefined, uses).key(0)).toBeUndefined();
});
