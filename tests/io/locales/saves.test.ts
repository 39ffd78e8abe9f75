import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { plan } from "../../../src/core/plan/plan.ts";
import { blockCells } from "../../../src/core/read/block/blockCells.ts";
import { sheetOf } from "../../../src/core/sheets/sheetOf.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { computedCsv } from "../../../src/io/computedCsv.ts";
import { decode } from "../../../src/io/decode.ts";
import type { Answers } from "../../../src/io/fileQuestion.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { readFolder } from "../../../src/io/readFolder.ts";
import { writeCsv } from "../../../src/io/writeCsv.ts";

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const bytesOf = (path: string) => new Uint8Array(readFileSync(at(path)));
const sample = (await readFolder(at("../../../sample-csv"))).workbook;
const files = Object.keys(sample.tables);
const countries = ["en-US", "en-GB", "de-DE", "fr-FR", "es-ES", "pt-BR", "de-CH", "ru-RU", "sw-KE"];
/** What the person in that country answers. */
const answers = (country: string): Answers => ({
	numbers: ["en-US", "en-GB", "de-CH", "sw-KE"].includes(country) ? "point" : "comma",
	dates: ["en-US", "sw-KE"].includes(country) ? "month-first" : "day-first",
});

const planOf = (workbook: Workbook) => {
	const { made, tables } = plan(workbook);
	expect(made).toBe(true);
	return Object.fromEntries(
		Object.values(tables).map((table) => [table.sheet.file, computedCsv(table)]),
	);
};
/** What every cell of a sheet means, by row and column. */
const meaningOf = (file: string, workbook: Workbook) => {
	const sheet = sheetOf(file);
	const table = workbook.tables[file];
	if (!sheet || !table) throw new Error(`no ${file}`);
	return blockCells({ sheet, table }).map(({ row, text, column, place }) => {
		const read = column.value.schema.safeParse(text);
		return [row, place.column, read.success ? read.data : text];
	});
};
const original = planOf(sample);
/** A file of a country with commas between its cells, quoted where they hold one. */
const csvWithCommas = (path: string) => {
	const decoded = decode(path, bytesOf(path));
	if (!decoded.ok) throw new Error(`${path} cannot be read`);
	return new TextEncoder().encode(writeCsv(readCsv(path, decoded.text).table));
};

describe("the sample workbook as a spreadsheet program saves it", () => {
	test.each(countries)("in %s: the same plan without a question", (country) => {
		const given = files.map((name) => ({ name, bytes: bytesOf(`${country}/${name}`) }));
		const read = readFiles(given);
		expect(read.questions).toEqual([]);
		expect(read.problems.filter(({ weight }) => weight === "error")).toEqual([]);
		expect(planOf(read.workbook)).toEqual(original);
	});

	test.each(countries.flatMap((country) => files.map((file) => [country, file] as const)))(
		"in %s: %s among sheets that were not touched means the same, or is asked",
		(country, file) => {
			const given = files.map((name) => ({
				name,
				bytes: bytesOf(name === file ? `${country}/${name}` : `../../../sample-csv/${name}`),
			}));
			const { questions } = readFiles(given);
			expect(questions.length).toBeLessThanOrEqual(1);
			const read = readFiles(given, questions.length > 0 ? answers(country) : {});
			expect(read.questions).toEqual([]);
			expect(meaningOf(file, read.workbook)).toEqual(meaningOf(file, sample));
		},
	);

	// Some programs put commas between cells in every country; then nothing but the texts tells. A “1,620” stays a problem.
	test.each(countries.flatMap((country) => files.map((file) => [country, file] as const)))(
		"in %s: %s in our own folder, with commas between its cells, is never read wrong",
		(country, file) => {
			const resaved = csvWithCommas(`${country}/${file}`);
			const names = [...files, "datapackage.json"];
			const given = names.map((name) => ({
				name,
				bytes: name === file ? resaved : bytesOf(`../../../sample-csv/${name}`),
			}));
			const { questions } = readFiles(given);
			const read = readFiles(given, questions.length > 0 ? answers(country) : {});
			expect(read.questions).toEqual([]);
			const isRefused = ([, , meaning]: readonly unknown[]) => /^\d+,\d{3}$/.test(String(meaning));
			const meant = meaningOf(file, sample);
			for (const [at, cell] of meaningOf(file, read.workbook).entries())
				if (!isRefused(cell)) expect(cell).toEqual(meant[at]);
		},
	);

	test.each(["sample.xlsx", "sample.ods"])("%s as a whole", (name) => {
		const read = readFiles([{ name, bytes: bytesOf(name) }]);
		expect(read).toMatchObject({ questions: [], problems: [] });
		for (const file of files)
			expect([file, meaningOf(file, read.workbook)]).toEqual([file, meaningOf(file, sample)]);
		expect(planOf(read.workbook)).toEqual(original);
	});
});
