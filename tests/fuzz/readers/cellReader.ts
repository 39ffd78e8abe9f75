import assert from "node:assert/strict";
import { settings } from "../../../src/core/sheets/settings.ts";
import { typedSheets } from "../../../src/core/sheets/typedSheets.ts";
import type { ValueKind } from "../../../src/core/values/valueKind.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const columns = [settings, ...typedSheets.map((sheet) => sheet.columns)].flatMap((all) =>
	Object.values(all),
);
/** Every kind of cell that a person can fill in, each once. */
const kinds: readonly ValueKind<unknown>[] = [
	...new Map(columns.map(({ value }) => [value.allowed, value as ValueKind<unknown>])).values(),
];
/** Files keep six decimals, or six digits that count. */
const ROUNDING = 1e-5;

export const cellReader: Reader = {
	name: "cells",
	seeds: [
		"6",
		"0,5",
		"1 000.5",
		"07:30",
		"2027-03-01",
		"2027-03-01 07:30",
		"03:10 14:25",
		"yes",
		"in_service",
		"gauze",
	].flatMap((text) => ["", " ", "\ufeff"].map((before) => textBytes(before + text))),
	words: [
		...TROUBLE,
		"0",
		"9",
		".",
		",",
		"e",
		"-",
		":",
		" ",
		"T",
		"\u202f",
		"\u00a0",
		...kinds.flatMap(({ options = [] }) => options),
	].map(textBytes),
	check(input) {
		const text = new TextDecoder().decode(input);
		for (const kind of kinds) {
			const read = kind.schema.safeParse(text);
			if (read.success) expectUnderstood(kind, text, read.data);
			else assert.equal(read.error.issues[0]?.message, kind.allowed);
		}
	},
};

function expectUnderstood(kind: ValueKind<unknown>, text: string, value: unknown): void {
	assert.ok(value !== undefined, "understood as nothing");
	const written = kind.write(value);
	if (!/NaN|undefined|Infinity|\[object/.test(text))
		assert.doesNotMatch(written, /NaN|undefined|Infinity|\[object/);
	const again = kind.schema.safeParse(written);
	assert.ok(again.success, `${JSON.stringify(value)} is written ${written}, which is not allowed`);
	if (typeof value === "number") {
		assert.ok(Number.isFinite(value));
		assert.ok(
			Math.abs((again.data as number) - value) <= ROUNDING * Math.max(1, Math.abs(value)),
			"written otherwise",
		);
		if (kind.numeric)
			assert.equal(value, Number(text.replace(/\s/g, "").replace(",", ".")), "another number");
	} else expectSame(again.data, value, "written otherwise");
}
