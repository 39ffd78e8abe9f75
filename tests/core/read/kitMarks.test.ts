import { expect, test } from "vitest";
import { kitMarks } from "../../../src/core/read/kitMarks.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { kitsSheet } from "../../../src/core/sheets/kits.ts";
import { tableOf } from "../smallUnit.ts";

test("a kit is known by its mark, whatever else of its line cannot be read; a line without a mark has none", () => {
	const kits = tableOf(`kit,kind,status,ready_since,note
		A,bag set,in_service,,
		B,bag set,lent,,
		,bag set,lent,,`);
	expect(kitMarks(readTable(kitsSheet, kits))).toEqual(["A", "B"]);
});
