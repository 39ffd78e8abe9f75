import assert from "node:assert/strict";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { clearForm } from "../../../src/io/history/clearForm.ts";
import { historyDigest } from "../../../src/io/history/historyDigest.ts";
import type { History } from "../../../src/io/history/historyFile.ts";
import { historyText } from "../../../src/io/history/historyText.ts";
import { readHistory } from "../../../src/io/history/readHistory.ts";
import { rememberedDescent } from "../../../src/io/history/rememberedDescent.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { expectPlain } from "../expectPlain.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFiles } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const workbook = clearForm(
	readFiles(sampleFiles.filter(({ name }) => /kits|uses|rounds/.test(name))).workbook,
);
const root = rootDescent(workbook);
const whole = historyText(root);
const used = whole
	.replace('"changed":[]', '"changed":[[0,2,"note",0]]')
	.replace('"gone":[]', '"gone":[[0,90,2,0]]');
const pieces = [
	"[",
	"]",
	"{",
	"}",
	'"',
	":",
	",",
	"0",
	"-1",
	"1e9",
	"99999",
	"null",
	"[]",
	"{}",
	".",
];
const keys = [
	'"saves":',
	'"sheets":',
	'"rows":',
	'"gone":',
	'"changed":',
	'"__proto__":',
	'"kits.csv":',
];

/** The same as a program would write it that remembers wrongly: its rows may be anybody's, but they are all there. */
function checkMeant(input: Uint8Array): void {
	const kept = parsed(new TextDecoder().decode(input));
	if (!kept?.saves || !kept.sheets) return;
	const digest = historyDigest(kept);
	const { history } = readHistory(textBytes(JSON.stringify({ ...kept, digest })));
	if (!history) return;
	const descent = wholeDescent(history);
	mergeCopies({ workbook, descent }, { workbook, descent: root });
}

/** What a history says of the workbook: every row comes from somewhere, and written and read again it is the same. */
function wholeDescent(history: History) {
	const descent = rememberedDescent(workbook, history);
	for (const [file, { rows }] of Object.entries(workbook.tables))
		assert.equal(descent.sheets[file]?.origins.length, rows.length, "a row from nowhere");
	const again = readHistory(textBytes(historyText(descent)));
	assert.deepEqual(rememberedDescent(workbook, again.history).saves, descent.saves);
	return descent;
}

function parsed(text: string): History | undefined {
	try {
		return JSON.parse(text) as History;
	} catch {
		return undefined;
	}
}

export const historyReader: Reader = {
	name: "history",
	seeds: [whole, used, '{"basinbook_history":1,"saves":[["a","",""]],"sheets":{}}'].map(textBytes),
	words: [...TROUBLE, ...pieces, ...keys].map(textBytes),
	check(input) {
		const { history, problems } = readHistory(input);
		checkMeant(input);
		expectPlain(problems, new TextDecoder().decode(input));
		assert.ok(problems.every(({ weight }) => weight === "advice"));
		assert.equal(history === undefined, problems.length === 1, "not used, and no word of it");
		if (!history) return;
		const descent = wholeDescent(history);
		const together = mergeCopies({ workbook, descent }, { workbook, descent: root }).workbook;
		for (const [file, { rows }] of Object.entries(workbook.tables))
			assert.equal(together.tables[file]?.rows.length, rows.length, "a line lost or made");
	},
};
