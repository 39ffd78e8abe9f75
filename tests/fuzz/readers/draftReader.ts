import assert from "node:assert/strict";
import { tablesIn } from "../../../src/core/edit/tablesIn.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { unitNameIn } from "../../../src/core/sheets/unitNameIn.ts";
import { lineOf } from "../../../src/core/workbook.ts";
import { migrated } from "../../../src/io/migrated.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFiles } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const { tables } = readFiles(
	sampleFiles.filter(({ name }) => /unit|births|rounds/.test(name)),
).workbook;
const pieces = ["[", "]", "{", "}", '"', ":", ",", "null", "7", "[]", "{}", '""', "1e999"];
const keys = [
	'"tables":',
	'"header":',
	'"rows":',
	'"lines":',
	'"__proto__":',
	'"unit.csv":',
	'"x.csv":',
];

export const draftReader: Reader = {
	name: "draft",
	seeds: [
		JSON.stringify({
			tables: { "births.csv": tables["births.csv"], "rounds.csv": tables["rounds.csv"] },
		}),
		JSON.stringify({
			tables: { "unit.csv": { header: ["key", "value"], rows: [["unit_name", "x"]] } },
			format: 2,
		}),
		'{"tables":{"rounds.csv":{"header":["start"],"rows":[["07:00"]],"lines":[2]}}}',
	].map(textBytes),
	words: [...TROUBLE, ...pieces, ...keys].map(textBytes),
	check(input) {
		const kept = parsed(input);
		const { tables: read, damaged } = tablesIn(kept);
		const given = Object.keys((kept as { tables?: object } | null)?.tables ?? {});
		expectSame(
			[...Object.keys(read), ...damaged].sort(),
			given.sort(),
			"a sheet lost without a word",
		);
		for (const table of Object.values(read)) {
			assert.ok(
				[table.header, ...table.rows].every((cells) =>
					cells.every((cell) => typeof cell === "string"),
				),
			);
			table.rows.forEach((_, row) => {
				assert.ok(
					Number.isInteger(lineOf(table, row)) && lineOf(table, row) > 0,
					"a line without a number",
				);
			});
		}
		const workbook = migrated({ tables: read });
		assert.equal(typeof unitNameIn(workbook), "string");
		expectSame(
			tablesIn(JSON.parse(JSON.stringify(workbook))).tables,
			workbook.tables,
			"kept otherwise",
		);
		// One in some is enough: a plan takes as long as a hundred drafts.
		if (input.length % 16 === 0) plan(workbook);
	},
};

function parsed(input: Uint8Array): unknown {
	try {
		return JSON.parse(new TextDecoder().decode(input));
	} catch {
		return undefined;
	}
}
