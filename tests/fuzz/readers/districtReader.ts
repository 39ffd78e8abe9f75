import assert from "node:assert/strict";
import { plan } from "../../../src/core/plan/plan.ts";
import { districtTypedSheets } from "../../../src/core/sheets/districtSheets.ts";
import { DistrictOrder } from "../../../src/core/units/districtOrder.ts";
import { itemNames } from "../../../src/core/units/itemNames.ts";
import { storeStock } from "../../../src/core/units/storeStock.ts";
import { computedCsv } from "../../../src/io/computedCsv.ts";
import { decode } from "../../../src/io/decode.ts";
import { ordersOf } from "../../../src/io/district/districtUnit.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { readSheetApart } from "../../../src/io/readSheetApart.ts";
import { expectPlain } from "../expectPlain.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFiles } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const { names: namesSheet, stock: stockSheet } = districtTypedSheets;
const PROGRAM_WORDS = /NaN|undefined|Infinity/;
const orders = ordersOf(plan(readFiles(sampleFiles).workbook));
const items = new Set(orders.map(({ item }) => item));
const parts = {
	names: "item,name\nGauze swab,Gauze\nGauze 10 x 10,Gauze\n",
	stock: "item,quantity,measure\nGauze,10,piece\nGauze swab,2.5,\nClean gloves,7,pair\n",
};
const CUT = "\u0001";

/** Names and stock of a district in one text, with a mark between them. */
export const districtReader: Reader = {
	name: "a district's own tables",
	seeds: [
		`${parts.names}${CUT}${parts.stock}`,
		`${parts.names.replaceAll(",", ";")}${CUT}${parts.stock.replaceAll(",", ";").replace("2.5", "2,5")}`,
		CUT,
	].map(textBytes),
	words: [
		...TROUBLE,
		CUT,
		",",
		";",
		"\n",
		'"',
		"item",
		"name",
		"quantity",
		"measure",
		"Gauze swab",
		"Gauze",
		"piece",
		"1.5",
	].map(textBytes),
	check(input) {
		const cut = input.indexOf(CUT.charCodeAt(0));
		const [of, own] = cut < 0 ? [input, input] : [input.slice(0, cut), input.slice(cut + 1)];
		const text = [Buffer.from(input).toString("latin1"), ...[of, own].map(textOf)].join("\n");
		const names = readSheetApart(namesSheet, of);
		const stock = readSheetApart(stockSheet, own);
		for (const { rows, problems } of [names, stock]) {
			expectPlain(problems, text);
			const isRefused = problems.some(({ weight }) => weight === "error");
			assert.ok(rows !== undefined || isRefused, "refused without a word");
		}
		if (names.rows) expectEveryRow("names.csv", of, names.rows);
		if (stock.rows) expectEveryRow("district-stock.csv", own, stock.rows);
		const table = names.rows?.rows.map(({ value }) => value) ?? [];
		const nameOf = itemNames(table);
		for (const { item, name } of table) assert.equal(nameOf(` ${item} `), name, "another name");
		const order = new DistrictOrder(nameOf);
		order.add(orders);
		const store = stock.rows ? storeStock(stock.rows, nameOf) : [];
		const sum = (all: readonly { quantity: number }[]) =>
			all.reduce((s, { quantity }) => s + quantity, 0);
		const counted = sum(stock.rows?.rows.map(({ value }) => value) ?? []);
		assert.ok(Math.abs(sum(store) - counted) <= counted * 1e-12, "stock lost or made");
		const { table: made, problems } = order.table(store);
		expectPlain(problems, text);
		assert.ok(made.rows.length >= new Set([...items].map(nameOf)).size, "an item is lost");
		const written = computedCsv(made);
		if (!PROGRAM_WORDS.test(text)) assert.doesNotMatch(written, PROGRAM_WORDS);
	},
};

/** As it is read, whatever its encoding. */
function textOf(bytes: Uint8Array): string {
	const decoded = decode("", bytes);
	return decoded.ok ? decoded.text : "";
}

type Read = NonNullable<ReturnType<typeof readSheetApart>["rows"]>;

/** Each row with text is understood, or has its problem. */
function expectEveryRow(
	file: string,
	bytes: Uint8Array,
	{ rows, badRows }: Pick<Read, "rows" | "badRows">,
): void {
	const decoded = decode(file, bytes);
	assert.ok(decoded.ok);
	const { table } = readCsv(file, decoded.text);
	const all = table.rows.flatMap((cells, at) =>
		cells.some((cell) => cell.trim() !== "") ? [table.lines?.[at]] : [],
	);
	const found = [...rows, ...badRows].map(({ line }) => line).sort((a, b) => a - b);
	assert.deepEqual(found, all, "a row is lost, or read twice");
	for (const { problems } of badRows) assert.ok(problems.length > 0, "refused without a word");
}
