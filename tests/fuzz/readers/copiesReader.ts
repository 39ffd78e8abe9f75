import assert from "node:assert/strict";
import type { Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies, type Together } from "../../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import { clearForm } from "../../../src/io/history/clearForm.ts";
import { historyText } from "../../../src/io/history/historyText.ts";
import { readCopy } from "../../../src/io/history/readCopy.ts";
import { unreadCopy } from "../../../src/io/history/unreadCopy.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { workbookFiles } from "../../../src/io/workbookFiles.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFile } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const FILES = ["uses.csv", "kits.csv", "rounds-done.csv"] as const;
const LINES = 6;
const csvOf = (name: string) => sampleFile(name, LINES);
const common = clearForm(readFiles(FILES.map((name) => ({ name, bytes: csvOf(name) }))).workbook);
const root = rootDescent(common);
const save = (id: string) => ({ id, at: "2027-03-02T08:00", by: "" });

/** What the other computer did meanwhile: a line taken away, one changed, one added, in each sheet. */
const ours = ((): Copy => {
	const tables = Object.entries(common.tables).map(([file, { header, rows }]) => {
		const [first = [], second = [], ...more] = rows;
		const noted = second.with(-1, "noted by us");
		return [file, { header, rows: [noted, ...more, first.map((text) => text && `${text}0`)] }];
	});
	const workbook = clearForm({ tables: Object.fromEntries(tables) });
	return { workbook, descent: withSave(root, workbook, save("ours")) };
})();

/** The first letter says which sheet the rest stands for, and whether its own program saved it. */
export const copiesReader: Reader = {
	name: "two copies",
	seeds: FILES.flatMap((name, at) =>
		[at, at + FILES.length].map(
			(letter) => new Uint8Array(Buffer.concat([Uint8Array.of(letter), csvOf(name)])),
		),
	),
	words: [...TROUBLE, ",", ";", "\n", '"', "K1", "K2", "used", "morning", "2027-02-28"].map(
		textBytes,
	),
	slow: true,
	check(input) {
		const letter = input[0] ?? 0;
		const changed = FILES[letter % FILES.length];
		const isSaved = Math.floor(letter / FILES.length) % 2 === 0;
		const read = readFiles([
			...FILES.map((name) => ({ name, bytes: name === changed ? input.slice(1) : csvOf(name) })),
			{ name: "history.json", bytes: textBytes(historyText(root)) },
		]);
		if (unreadCopy(read).length > 0 || read.questions.length > 0) return;
		const given = readCopy(read);
		const theirs = isSaved
			? { ...given, descent: withSave(root, given.workbook, save("theirs")) }
			: given;
		expectNothingNew(mergeCopies(theirs, theirs), theirs, "with itself");
		for (const [one, other] of [
			[ours, theirs],
			[theirs, ours],
		] as const) {
			const together = mergeCopies(one, other);
			expectOneEach(together);
			expectNothingNew(mergeCopies(together, other), together, "a second time");
			const again = readCopy(
				readFiles(
					Object.entries(workbookFiles(together.workbook, undefined, together.descent)).map(
						([name, text]) => ({ name, bytes: textBytes(text) }),
					),
				),
			);
			expectSame(rowsOf(again), rowsOf(together), "kept otherwise");
			expectNothingNew(mergeCopies(again, one), again, "after it was kept");
		}
	},
};

/** Each row stems from somewhere, and no two from the same place; none that is there was deleted. */
function expectOneEach({ workbook, descent }: Together): void {
	for (const [file, { rows }] of Object.entries(workbook.tables)) {
		const { origins = [], gone } = descent.sheets[file] ?? {};
		assert.equal(origins.length, rows.length, `${file}: a row from nowhere`);
		assert.equal(new Set(origins).size, origins.length, `${file}: a row twice`);
		assert.ok(!origins.some((origin) => gone?.has(origin)), `${file}: a deleted row`);
	}
}

function expectNothingNew(together: Together, before: Copy, when: string): void {
	expectSame(rowsOf(together), rowsOf(before), `changed ${when}`);
}

function rowsOf({ workbook }: Copy): [string, readonly (readonly string[])[]][] {
	return Object.entries(workbook.tables).map(([file, { header, rows }]) => [
		file,
		[header, ...rows],
	]);
}
