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

	test("advice alone leaves it a value", () => {
		expect(startsOf("start,label,colour\n07:00,early,red").outcome).toMatchObject({ ok: true });
	});
});
