import assert from "node:assert/strict";
import { checkDataPackage, formatOf } from "../../../src/io/checkDataPackage.ts";
import { dataPackage } from "../../../src/io/dataPackage.ts";
import { decode } from "../../../src/io/decode.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { expectPlain } from "../expectPlain.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFile } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const births = readCsv("births.csv", new TextDecoder().decode(sampleFile("births.csv", 3))).table;
const pieces = [
	"[",
	"]",
	"{",
	"}",
	'"',
	":",
	",",
	"\\",
	"\\u0000",
	"null",
	"true",
	"1e999",
	"-1",
	"[]",
	"{}",
];
const keys = [
	'"resources":',
	'"basinbook_format":',
	'"__proto__":',
	'"constructor":',
	'"toString":',
];

export const descriptionReader: Reader = {
	name: "description",
	seeds: [
		dataPackage({ tables: { "births.csv": births } }),
		'{"resources": [], "basinbook_format": 1}',
		'{"resources": [{"path": "births.csv"}]}',
		"[[[[null]]]]",
	].map(textBytes),
	words: [...TROUBLE, ...pieces, ...keys].map(textBytes),
	check(input) {
		const decoded = decode("datapackage.json", input);
		if (!decoded.ok) return;
		const { text } = decoded;
		const problems = checkDataPackage("datapackage.json", text);
		expectPlain(problems, text);
		assert.ok(problems.length <= 1 && problems.every(({ weight }) => weight === "advice"));
		if (problems.length > 0) return;
		const { resources } = JSON.parse(text);
		assert.ok(Array.isArray(resources), "no list of resources, and no word of it");
		const format = formatOf(text);
		assert.ok(
			format === undefined || (Number.isInteger(format) && format >= 1),
			`edition ${format}`,
		);
	},
};
