import { strToU8 } from "fflate";
import { expect, test } from "vitest";
import { withoutRows } from "../../../src/core/edit/withoutRows.ts";
import { withRow } from "../../../src/core/edit/withRow.ts";
import type { Copy, Descent } from "../../../src/core/merge/descent.ts";
import { rootDescent } from "../../../src/core/merge/rootDescent.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { clearForm } from "../../../src/io/history/clearForm.ts";
import { historyDigest } from "../../../src/io/history/historyDigest.ts";
import { readCopy } from "../../../src/io/history/readCopy.ts";
import { readHistory } from "../../../src/io/history/readHistory.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { workbookFiles } from "../../../src/io/workbookFiles.ts";
import { smallUnit } from "../../core/smallUnit.ts";

const FILE = "kits.csv";

/** The small unit saved three times: rows entered, changed and deleted in between. */
function saved(): { workbook: Workbook; descent: Descent } {
	let workbook = clearForm(smallUnit());
	let descent = rootDescent(workbook);
	const step = (next: Workbook, id: string) => {
		workbook = clearForm(next);
		descent = withSave(descent, workbook, { id, at: `2027-03-0${id.length}T10:00`, by: "Amina" });
	};
	step(withRow(workbook, FILE, { kit: "E", kind: "bag set", status: "in_service" }), "one");
	step(withRow(workbook, FILE, { note: "torn", status: "out_of_service" }, 1), "third");
	step(withoutRows(workbook, FILE, new Set([0])), "second");
	return { workbook, descent };
}

const readBack = (texts: Readonly<Record<string, string>>): Copy =>
	readCopy(
		readFiles(Object.entries(texts).map(([name, text]) => ({ name, bytes: strToU8(text) }))),
	);

test("a workbook's descent comes back from its files as it was", () => {
	const { workbook, descent } = saved();
	const copy = readBack(workbookFiles(workbook, undefined, descent));
	expect(copy.descent.saves).toEqual(descent.saves);
	for (const [file, { origins, changed, gone }] of Object.entries(descent.sheets))
		expect(copy.descent.sheets[file], file).toMatchObject({ origins, changed, gone });
	expect(copy.descent.sheets[FILE]?.gone.size).toBe(1);
	expect(copy.descent.sheets[FILE]?.changed.size).toBe(1);
});

test("a sheet that another program changed is told from one that is as it was saved", () => {
	const { workbook, descent } = saved();
	const texts = workbookFiles(workbook, undefined, descent);
	const { sheets } = readBack({
		...texts,
		[FILE]: `${texts[FILE]}F,bag set,in_service,,\r\n`,
	}).descent;
	expect(sheets[FILE]?.altered).toBe(true);
	const put = readBack({
		...texts,
		[FILE]: texts[FILE]?.replace("out_of_service", "in_service") ?? "",
	});
	expect(put.descent.sheets[FILE]?.altered).toBe(true);
	expect(sheets["lots.csv"]?.altered).toBe(undefined);
});

test("the same texts in another form are the same sheet", () => {
	const { workbook, descent } = saved();
	const texts = workbookFiles(workbook, undefined, descent);
	const other = `\ufeff${texts[FILE]?.replaceAll(",", ";").replaceAll("\r\n", "\n")}\n\n`;
	expect(readBack({ ...texts, [FILE]: other }).descent.sheets[FILE]?.altered).toBe(undefined);
});

const { workbook, descent } = saved();
const text = workbookFiles(workbook, undefined, descent)["history.json"] ?? "";
/** As a program would write it that remembers wrongly: its digest is right. */
const meant = (bad: string) => {
	const kept = JSON.parse(bad);
	return JSON.stringify({ ...kept, digest: historyDigest(kept) });
};
const damaged: readonly (readonly [string, string])[] = [
	["another digest", text.replace('"digest":"', '"digest":"0')],
	["rows that are others than they were", text.replace('"rows":[[0,0,', '"rows":[[0,2,')],
	["no JSON", "{"],
	["half of it", text.slice(0, text.length / 2)],
	["a list", "[]"],
	["no sheets", '{"basinbook_history":1,"saves":[]}'],
	["a save that is none", meant(text.replace('"saves":[[', '"saves":[7,['))],
	["a save twice", meant(text.replace(/("saves":\[)(\[[^\]]*\])/, "$1$2,$2"))],
	["a save that is not in the list", meant(text.replace('"rows":[[0,', '"rows":[[99,'))],
	[
		"more rows than there can be",
		meant(text.replace(/"rows":\[\[0,0,\d+\]/, '"rows":[[0,0,999999999]')),
	],
	["a count below nothing", meant(text.replace(/"rows":\[\[0,0,\d+\]/, '"rows":[[0,0,-3]'))],
	["a newer edition", text.replace('"basinbook_history":1', '"basinbook_history":2')],
];
test.each(damaged)("what is damaged is advice and not used: %s", (_, bad) => {
	expect(bad).not.toBe(text);
	const { history, problems } = readHistory(strToU8(bad));
	expect(history).toBe(undefined);
	expect(problems.map(({ code, weight }) => [code, weight])).toEqual([
		["strange-history", "advice"],
	]);
	const copy = readBack({ ...workbookFiles(workbook), "history.json": bad });
	expect(copy.descent).toEqual(rootDescent(copy.workbook));
});

test("a file of before, without a digest of its own, is used", () => {
	const { digest: _, ...before } = JSON.parse(text);
	expect(readHistory(strToU8(JSON.stringify(before)))).toEqual({ history: before, problems: [] });
});
