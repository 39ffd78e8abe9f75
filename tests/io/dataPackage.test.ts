import { beforeAll, describe, expect, test } from "vitest";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { checkDataPackage } from "../../src/io/checkDataPackage.ts";
import { computedCsv, problemsCsv } from "../../src/io/computedCsv.ts";
import { dataPackage } from "../../src/io/dataPackage.ts";
import { computedTables, typedTables } from "../../src/io/describedTable.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readFolder } from "../../src/io/readFolder.ts";
import { writeCsv } from "../../src/io/writeCsv.ts";
import { breach, type Resource } from "./tableSchema.ts";

let sample: Workbook;
let made: Plan;
beforeAll(async () => {
	sample = (await readFolder("sample-csv")).workbook;
	made = plan(sample);
});

const resourcesOf = (text: string) => JSON.parse(text).resources as Resource[];

/** Every cell of a file that is not as its description says. */
function breaches({ path, schema }: Resource, csv: string): string[] {
	const { table } = readCsv(path, csv);
	expect(table.header).toEqual(schema.fields.map(({ name }) => name));
	return table.rows.flatMap((row, line) =>
		schema.fields.flatMap((field, at) => {
			const wrong = breach(field, row[at] ?? "");
			return wrong ? [`${path} ${line + 2} ${field.name}: ${wrong}`] : [];
		}),
	);
}

describe("the description of the files", () => {
	test("the sample's sheets are as it says", () => {
		const resources = resourcesOf(dataPackage(sample));
		const present = typedSheets.filter(({ file, optional }) => !optional || file in sample.tables);
		expect(resources.map(({ path }) => path)).toEqual(present.map(({ file }) => file));
		for (const resource of resources) {
			const table = sample.tables[resource.path] ?? { header: [], rows: [] };
			expect(breaches(resource, writeCsv(table))).toEqual([]);
		}
	});

	test("the plan's sheets and problems.csv are as it says", () => {
		const resources = resourcesOf(dataPackage(computedTables(made)));
		expect(resources.length).toBe(Object.keys(made.tables).length + 1);
		for (const resource of resources) {
			const table = made.tables[resource.path];
			const csv = table ? computedCsv(table) : problemsCsv(made.problems);
			expect(breaches(resource, csv)).toEqual([]);
		}
	});

	test("the check can fail: a bad cell of every kind is found", () => {
		const [births] = resourcesOf(
			dataPackage(typedTables(sample).filter((t) => t.path === "births.csv")),
		);
		const bad = "date,births,note\r\n2027-3-1,501,\r\n,-1,\r\n2027-03-01,many,\r\n";
		expect(births && breaches(births, bad)).toEqual([
			"births.csv 2 date: date",
			"births.csv 2 births: maximum",
			"births.csv 3 date: required",
			"births.csv 3 births: minimum",
			"births.csv 4 births: number",
		]);
	});

	test("names, profiles and paths are as the specification asks", () => {
		const text = dataPackage([...typedTables(sample), ...computedTables(made, "plan/")]);
		const descriptor = JSON.parse(text);
		expect(descriptor.profile).toBe("tabular-data-package");
		expect(descriptor.name).toMatch(/^[-a-z0-9._/]+$/);
		expect(descriptor).not.toHaveProperty("created");
		const resources = resourcesOf(text);
		expect(new Set(resources.map(({ name }) => name)).size).toBe(resources.length);
		for (const { name, path, profile, schema } of resources) {
			expect(profile).toBe("tabular-data-resource");
			expect(name).toMatch(/^[-a-z0-9._/]+$/);
			expect(path).toMatch(/^(plan\/)?[a-z-]+\.csv$/);
			const names = schema.fields.map((field) => field.name);
			expect(new Set(names).size).toBe(names.length);
			for (const key of schema.primaryKey ?? []) expect(names).toContain(key);
			expect(schema.missingValues).toEqual([""]);
		}
		expect(checkDataPackage("datapackage.json", text)).toEqual([]);
	});

	test("units and defaults are said, and a column of someone's own is described as text", () => {
		const header = ["item", "lead_days", "shelf"];
		const [items] = resourcesOf(dataPackage({ tables: { "items.csv": { header, rows: [] } } }));
		expect(items?.schema.fields).toMatchObject([
			{ name: "item", type: "string", constraints: { required: true } },
			{ name: "lead_days", type: "number", constraints: { required: false, maximum: 366 } },
			{ name: "shelf", type: "string" },
		]);
		expect(items?.schema.fields[1]).toMatchObject({
			description: expect.stringMatching(/Unit: days\. Blank means 7\./),
		});
	});
});
