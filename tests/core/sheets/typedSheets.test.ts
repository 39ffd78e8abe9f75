import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import type { Sheet } from "../../../src/core/sheet.ts";
import { combinedOrderSheet } from "../../../src/core/sheets/combinedOrder.ts";
import { computedSheets } from "../../../src/core/sheets/computedSheets.ts";
import { districtSheets, districtTypedSheets } from "../../../src/core/sheets/districtSheets.ts";
import { monthSheet } from "../../../src/core/sheets/month.ts";
import { problemsSheet } from "../../../src/core/sheets/problems.ts";
import { typedSheets } from "../../../src/core/sheets/typedSheets.ts";

const FOLDER = join(import.meta.dirname, "../../../src/core/sheets");

/** Every sheet that a file of the folder defines. */
async function definedSheets(): Promise<Sheet[]> {
	const modules = await Promise.all(
		readdirSync(FOLDER).map((file) => import(join(FOLDER, file)) as Promise<object>),
	);
	const sheets = modules.flatMap((module) => Object.values(module).filter(isSheet));
	return [...new Set(sheets)];
}

function isSheet(value: unknown): value is Sheet {
	return typeof value === "object" && value !== null && "file" in value && "columns" in value;
}

/** What a district fills in beside its units' workbooks. */
const ofDistrict = Object.values<Sheet>(districtTypedSheets);

/** Sheets that stand outside the lists: one lists the problems, some belong to many units, one is made for a month that is asked for. */
const apart: readonly Sheet[] = [
	problemsSheet,
	combinedOrderSheet,
	monthSheet,
	...districtSheets,
	...ofDistrict,
];

test("lists every sheet that is defined", async () => {
	const listed = [...typedSheets, ...computedSheets, ...apart].map(({ file }) => file);
	const defined = (await definedSheets()).map(({ file }) => file);
	expect(defined.length).toBeGreaterThan(40);
	expect(defined.sort()).toEqual(listed.sort());
});

test("lists as typed the sheets that have a column to fill in, and no other", async () => {
	const filledIn = (await definedSheets()).filter(({ columns }) =>
		Object.values(columns).some(({ role }) => role === "typed"),
	);
	expect(filledIn.map(({ file }) => file).sort()).toEqual(
		[...typedSheets, ...ofDistrict].map(({ file }) => file).sort(),
	);
});

test("reads every sheet that is listed", () => {
	const unknownColumn = { header: ["nobody"], rows: [] };
	const tables = Object.fromEntries(typedSheets.map(({ file }) => [file, unknownColumn]));
	const told = readWorkbook({ tables })
		.problems.filter(({ code }) => code === "unknown-column")
		.map(({ file }) => file);
	expect(told.sort()).toEqual(typedSheets.map(({ file }) => file).sort());
});
