import { expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { hourShares } from "../../../../src/core/plan/rounds/hourShares.ts";
import { readTable } from "../../../../src/core/read/readTable.ts";
import { hoursSheet } from "../../../../src/core/sheets/hours.ts";
import { recordsSheet } from "../../../../src/core/sheets/records.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { tableOf } from "../../smallUnit.ts";

const noRecords = readTable(recordsSheet, undefined);
const shares = (...rows: string[]) =>
	hourShares(readTable(hoursSheet, tableOf(["hour,share", ...rows].join("\n"))), noRecords);

test("without weights every hour is alike, by default", () => {
	for (const figure of [shares(), hourShares(readTable(hoursSheet, undefined), noRecords)]) {
		expect(figure.origin.kind).toBe("default");
		expect(figure.outcome).toEqual({ ok: true, value: Array(24).fill(1 / 24) });
	}
});

test.each([
	["only proportions count", ["0,30", "12,10"]],
	["the order does not matter", ["12,1", "0,3"]],
	["an hour of weight 0 is an hour left out", ["0,0.75", "5,0", "12,0.25"]],
])("%s", (_what, rows) => {
	const { outcome } = shares(...rows);
	if (!outcome.ok) throw new Error("the weights should be readable");
	expect(outcome.value).toHaveLength(24);
	expectWithin(outcome.value[0], 0.75, 1e-15, "share");
	expectWithin(outcome.value[12], 0.25, 1e-15, "share");
	expectWithin(
		outcome.value.reduce((sum, share) => sum + share, 0),
		1,
		1e-15,
		"share",
	);
});

test.each([
	["an hour that is none", ["24,1"], ["bad-cell"]],
	["a weight below 0", ["3,-1"], ["bad-cell"]],
	["the same hour twice", ["3,1", "3,2"], ["doubled-row", "doubled-row"]],
	["all weights 0", ["3,0", "4,0"], ["no-weight"]],
])("%s leaves them without a value", (_what, rows, codes) => {
	expect(problemsOf(shares(...rows).outcome).map((p) => p.code)).toEqual(codes);
});
