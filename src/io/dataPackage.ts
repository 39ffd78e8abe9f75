import { type Column, mayBeBlank } from "../core/column.ts";
import { say } from "../core/say.ts";
import type { Workbook } from "../core/workbook.ts";
import { type DescribedTable, typedTables } from "./describedTable.ts";
import { FORMAT } from "./migrated.ts";

/**
 * The description of a workbook's files for other programs, `datapackage.json`:
 * Frictionless Data Package 1, profile tabular-data-package, with one Table
 * Schema a file. It says nothing about when it was made, so that the same
 * workbook always gives the same file.
 *
 * @param format edition of the file format that the tables are in
 */
export function dataPackage(
	of: Workbook | readonly DescribedTable[],
	format: number = FORMAT,
): string {
	const tables = "tables" in of ? typedTables(of) : of;
	const descriptor = {
		profile: "tabular-data-package",
		name: "basinbook-workbook",
		title: say`Planning workbook for newborn resuscitation kits`,
		basinbook_format: format,
		resources: tables.map(resource),
	};
	return `${JSON.stringify(descriptor, null, "\t")}\n`;
}

function resource({ path, sheet, header }: DescribedTable) {
	const { title, about, unique, columns } = sheet;
	return {
		profile: "tabular-data-resource",
		name: path.replace(/\.csv$/, ""),
		path,
		title,
		description: about,
		format: "csv",
		mediatype: "text/csv",
		encoding: "utf-8",
		dialect: {
			delimiter: ",",
			lineTerminator: "\r\n",
			quoteChar: '"',
			doubleQuote: true,
			skipInitialSpace: false,
			header: true,
			caseSensitiveHeader: true,
		},
		schema: {
			fields: header.map((key) =>
				field(key, Object.hasOwn(columns, key) ? columns[key] : undefined),
			),
			missingValues: [""],
			...(unique?.every((key) => header.includes(key)) ? { primaryKey: unique } : {}),
		},
	};
}

/** A column that the format does not know is described as text. */
function field(name: string, column: Column<unknown> | undefined) {
	if (!column) return { name, type: "string", description: say`Not part of the format.` };
	const { constraints, ...kind } = column.value.tableSchema;
	return {
		name,
		title: column.label,
		...kind,
		description: describe(column),
		constraints: { ...(constraints as object | undefined), required: isRequired(column) },
	};
}

function describe({ help, unit, fallback, value }: Column<unknown>): string {
	const standard = fallback === undefined ? "" : value.write(fallback);
	return [help, unit && say`Unit: ${unit}.`, standard && say`Blank means ${standard}.`]
		.filter((part) => part !== "")
		.join(" ");
}

/** Typed in, and not allowed to be blank. A computed cell is blank where there is no answer. */
function isRequired(column: Column<unknown>): boolean {
	return column.role === "typed" && !mayBeBlank(column);
}
