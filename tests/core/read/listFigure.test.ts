import { describe, expect, test } from "vitest";
import { listFigure } from "../../../src/core/read/listFigure.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { roundsSheet } from "../../../src/core/sheets/rounds.ts";
import { tableOf } from "../smallUnit.ts";

const startsOf = (text: string) =>
	listFigure("Starts", "min", readTable(roundsSheet, tableOf(text)), (rows) =>
		rows.map(({ value }) => value.start),
	);

describe("a sheet used as a whole", () => {
	test("is a list with a place", () => {
		expect(startsOf("start,label\n07:00,early\n14:00,late")).toMatchObject({
			label: "Starts",
			unit: "min",
			outcome: { ok: true, value: [420, 840] },
			origin: { kind: "typed", place: { file: "rounds.csv", line: null, column: "" } },
		});
	});

	test.each([
		["a row that cannot be read", "start,label\n07:00,early\nnoon,late", ["bad-cell"]],
		["a header without a column", "label\nearly", ["missing-column", "bad-cell"]],
	])("has no value for %s", (_, text, codes) => {
		expect(startsOf(text).outcome).toMatchObject({
			ok: false,
			problems: codes.map((code) => ({ code })),
		});
	});

	// workbook-format.md: a missing column is a problem; good rows still load.
	test("a column that may be blank and is not there is a problem, and leaves it a value", () => {
		const table = readTable(roundsSheet, tableOf("start\n07:00\n14:00"));
		expect(table.problems).toMatchObject([
			{ code: "missing-column", weight: "error", column: "label", allowed: "the column label" },
		]);
		expect(table.problems[0]?.message).toContain("read as if it were blank");
		expect(startsOf("start\n07:00\n14:00").outcome).toEqual({ ok: true, value: [420, 840] });
	});

	test("advice alone leaves it a value", () => {
		expect(startsOf("start,label,colour\n07:00,early,red").outcome).toMatchObject({ ok: true });
	});
});
