import assert from "node:assert/strict";
import { plan } from "../../../src/core/plan/plan.ts";
import { combineOrders } from "../../../src/core/units/combineOrders.ts";
import { computedCsv } from "../../../src/io/computedCsv.ts";
import { decode } from "../../../src/io/decode.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { readOrder, readOrders } from "../../../src/io/readOrders.ts";
import { expectPlain } from "../expectPlain.ts";
import { expectTable } from "../expectTable.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFiles } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const order = plan(readFiles(sampleFiles).workbook).tables["order.csv"];
if (!order) throw new Error("the sample has no order");
const whole = computedCsv(order);
const lines = whole.split("\r\n");

export const ordersReader: Reader = {
	name: "orders",
	seeds: [
		lines.slice(0, 4).join("\r\n"),
		`\ufeff${lines.slice(0, 3).join("\n").replaceAll(",", ";")}`,
		lines[0] ?? "",
	].map(textBytes),
	words: [
		...TROUBLE,
		",",
		";",
		"\n",
		"yes",
		"no",
		"piece",
		'"',
		...(lines[0] ?? "").split(","),
	].map(textBytes),
	check(input) {
		const decoded = decode("a.csv", input);
		const text = decoded.ok ? decoded.text : new TextDecoder().decode(input);
		const { order: read, problems } = readOrder({ name: "a.csv", bytes: input });
		expectPlain(problems, text);
		if (!read)
			return assert.ok(
				problems.some(({ weight }) => weight === "error"),
				"refused without a word",
			);
		expectTable(readCsv("a.csv", text).table, read.rows);
		const both = readOrders([
			{ name: "a.csv", bytes: input },
			{ name: "b.csv", bytes: textBytes(whole) },
			{ name: "c.csv", bytes: input },
		]);
		assert.ok(
			both.problems.some(({ code }) => code === "same-order-twice"),
			"counted twice",
		);
		const combined = computedCsv(combineOrders(both.orders));
		if (!/NaN|undefined|Infinity/.test(text))
			assert.doesNotMatch(combined, /NaN|undefined|Infinity/);
	},
};
