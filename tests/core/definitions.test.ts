import { writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Calculation } from "../../src/core/calculation.ts";
import type { Column } from "../../src/core/column.ts";
import type { Sheet } from "../../src/core/sheet.ts";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { settings } from "../../src/core/sheets/settings.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { calculationWords } from "./calculationWords.ts";
import golden from "./definitions.json" with { type: "json" };

/**
 * Units, limits, defaults and sources of every column, setting and calculation, as they
 * were last looked at and found right: files of other units and other programs rely on them.
 *
 * UPDATE_GOLDEN=1 npx vitest run tests/core/definitions.test.ts takes the present ones over.
 */
const modules = import.meta.glob<Record<string, unknown>>("../../src/core/**/*.ts", {
	eager: true,
});

const calculations = Object.values(modules).flatMap((module) =>
	Object.entries(module).filter((entry): entry is [string, Calculation] => {
		const [, value] = entry;
		return typeof value === "object" && value !== null && "compute" in value && "formula" in value;
	}),
);

const present = {
	sheets: Object.fromEntries(
		[...typedSheets, ...computedSheets].map((s) => [s.file, sheetWords(s)]),
	),
	columns: Object.fromEntries(
		[...typedSheets, ...computedSheets].flatMap(({ file, columns }) =>
			Object.entries(columns).map(([key, column]) => [`${file} ${key}`, columnWords(column)]),
		),
	),
	settings: Object.fromEntries(
		Object.entries<Column<unknown>>(settings).map(([key, column]) => [key, columnWords(column)]),
	),
	calculations: Object.fromEntries(
		calculations.map(([name, calculation]) => [name, calculationWords(calculation)]),
	),
};

if (process.env.UPDATE_GOLDEN === "1")
	writeFileSync("tests/core/definitions.json", `${JSON.stringify(present, null, "\t")}\n`);

test.each(Object.keys(present) as (keyof typeof present)[])("%s", (part) => {
	expect(JSON.parse(JSON.stringify(present[part]))).toEqual(golden[part]);
});

function sheetWords({ optional, unique }: Sheet): string {
	return [optional && "optional", unique && `unique by ${unique.join(" and ")}`]
		.filter(Boolean)
		.join(", ");
}

function columnWords(column: Column<unknown>) {
	const { role, unit, value, fallback, decimals, rounds, signed, coded, added, source } = column;
	const { type, constraints, ...more } = value.tableSchema;
	return [
		role,
		type,
		JSON.stringify({ constraints, ...more }),
		`[${unit}]`,
		fallback !== undefined && `blank: ${value.write(fallback)}`,
		decimals !== undefined && `${decimals} decimals`,
		rounds && `rounds ${rounds}`,
		signed && "signed",
		coded && "coded",
		value.numeric && "numeric",
		value.options && `options: ${value.options.join(" ")}`,
		added && "added",
		source && `${source.mark}: ${source.url ?? source.place ?? ""}`,
		`accepts blank: ${value.schema.safeParse("").success}`,
	]
		.filter(Boolean)
		.join("; ");
}
