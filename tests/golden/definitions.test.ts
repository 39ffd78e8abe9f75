import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";
import type { Column } from "../../src/core/column.ts";
import type { Sheet } from "../../src/core/sheet.ts";
import { combinedOrderSheet } from "../../src/core/sheets/combinedOrder.ts";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { districtSheets, districtTypedSheets } from "../../src/core/sheets/districtSheets.ts";
import { monthSheet } from "../../src/core/sheets/month.ts";
import { problemsSheet } from "../../src/core/sheets/problems.ts";
import { settings } from "../../src/core/sheets/settings.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { calculationWords } from "./calculationWords.ts";
import { expectGolden } from "./expectGolden.ts";

/**
 * Units, limits, defaults and sources of every column, setting and calculation, as they
 * were last looked at and found right: files of other units and other programs rely on them.
 */
const GOLDEN = "tests/golden/definitions";
const modules = import.meta.glob<Record<string, object>>("../../src/core/**/*.ts", {
	eager: true,
});

const sheets = [
	...typedSheets,
	...computedSheets,
	...districtSheets,
	...Object.values(districtTypedSheets),
	combinedOrderSheet,
	monthSheet,
	problemsSheet,
];
const sheetFile = ({ file }: Sheet) => file.replace(/csv$/, "json");

test.each(sheets.map((sheet) => [sheet.file, sheet] as const))("%s", (_, sheet) => {
	const columns = Object.entries(sheet.columns);
	expectGolden(join(GOLDEN, "sheets", sheetFile(sheet)), {
		sheet: sheetWords(sheet),
		columns: Object.fromEntries(columns.map(([key, column]) => [key, columnWords(column)])),
	});
});

test.each(sheets.map((sheet) => [sheet.file, sheet] as const))(
	"%s says in words what it and its columns are",
	(_, { title, about, columns }) => {
		const words = Object.entries({ ...columns, sheet: { label: title, help: about } });
		const wordless = ({ label, help }: Partial<Column<unknown>>) =>
			!/\S/.test(label ?? "") || !/\S[.!?:)]$/.test(help ?? "");
		expect(words.filter(([, one]) => wordless(one)).map(([key]) => key)).toEqual([]);
	},
);

/** By folder of the core: its settings and its calculations. */
const subjects: Record<string, Record<"settings" | "calculations", Record<string, string>>> = {};
for (const [path, module] of Object.entries(modules)) {
	const [subject = ""] = path.replace("../../src/core/", "").split("/");
	if (subject === "sheets") continue;
	for (const [name, value] of Object.entries(module).sort(byName)) {
		const words = () => (subjects[subject] ??= { settings: {}, calculations: {} });
		if (isCalculation(value)) words().calculations[name] = calculationWords(value);
		if (path.endsWith("/settings.ts") && name.endsWith("ettings"))
			for (const [key, column] of Object.entries<Column<unknown>>(value as never))
				words().settings[key] = columnWords(column);
	}
}

test.each(Object.keys(subjects))("settings and calculations of %s", (subject) => {
	expectGolden(join(GOLDEN, `${subject}.json`), subjects[subject]);
});

test("every setting is one of a subject's, and no file is left of what is gone", () => {
	const ofSubjects = Object.values(subjects).flatMap((words) => Object.keys(words.settings));
	expect(ofSubjects.sort()).toEqual(Object.keys(settings).sort());
	expect(readdirSync(join(GOLDEN, "sheets"))).toEqual(sheets.map(sheetFile).sort());
	const files = Object.keys(subjects).map((subject) => `${subject}.json`);
	expect(readdirSync(GOLDEN)).toEqual([...files, "sheets"].sort());
});

/** A loader may list what a module exports in any order. */
function byName([a]: [string, unknown], [b]: [string, unknown]): number {
	return a < b ? -1 : 1;
}

function isCalculation(value: unknown): value is Calculation {
	return typeof value === "object" && value !== null && "compute" in value && "formula" in value;
}

function sheetWords({ optional, unique, alike }: Sheet): string {
	return [
		optional && "optional",
		unique && `unique by ${unique.join(" and ")}`,
		alike && `alike by ${alike.join(" and ")}`,
	]
		.filter(Boolean)
		.join(", ");
}

function columnWords(column: Column<unknown>) {
	const { role, unit, value, fallback, decimals, mixed, rounds, signed, coded, source } = column;
	const { added, ifAny, behind } = column;
	const { type, constraints, ...more } = value.tableSchema;
	return [
		role,
		type,
		JSON.stringify({ constraints, ...more }),
		`[${unit}]`,
		fallback !== undefined && `blank: ${value.write(fallback)}`,
		decimals !== undefined && `${decimals} decimals`,
		mixed && "mixed measures",
		rounds && `rounds ${rounds}`,
		signed && "signed",
		coded && "coded",
		value.numeric && "numeric",
		value.written && `written as ${value.written}`,
		value.options && `options: ${value.options.join(" ")}`,
		added && "added",
		ifAny && "if any",
		behind && "behind",
		source && `${source.mark}: ${source.url ?? source.place ?? ""}`,
		`accepts blank: ${value.schema.safeParse("").success}`,
	]
		.filter(Boolean)
		.join("; ");
}
