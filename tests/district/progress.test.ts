import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { Progress } from "../../src/cli/district/progress.ts";
import { sideBySide } from "../../src/cli/district/sideBySide.ts";
import { workbooksIn } from "../../src/cli/district/workbooksIn.ts";

/** What is said where 50 units are done each second, of 100. */
function said(isTerminal: boolean, seconds: number): string[] {
	const lines: string[] = [];
	let now = 0;
	const progress = new Progress({ isTerminal, write: (text) => lines.push(text) }, () => now);
	progress.expect(100);
	for (let second = 0; second < seconds; second++) {
		now += 1000;
		progress.add(5);
	}
	progress.end();
	return lines;
}

test.each([
	[
		"a terminal: its line is written over",
		true,
		2,
		["\r5/100 units, 5.00 a second", "\r10/100 units, 5.00 a second", "\n"],
	],
	[
		"a file: a line every ten seconds",
		false,
		20,
		["50/100 units, 5.00 a second\n", "100/100 units, 5.00 a second\n"],
	],
	["a short run: nothing", false, 9, []],
])("how far it is, to %s", (_, isTerminal, seconds, lines) => {
	expect(said(isTerminal, seconds)).toEqual(lines);
});

test("results come in the order of the tasks, and no more than so many run at once", async () => {
	async function* tasks() {
		for (let task = 0; task < 20; task++) yield task;
	}
	let running = 0;
	let most = 0;
	const results: number[] = [];
	const run = async (task: number) => {
		most = Math.max(most, ++running);
		// The earlier a task, the longer it takes.
		for (let turn = task; turn < 20; turn++) await Promise.resolve();
		running--;
		return task;
	};
	for await (const result of sideBySide(tasks(), run, 4)) results.push(result);
	expect(results).toEqual(Array.from({ length: 20 }, (_, task) => task));
	expect(most).toBe(4);
});

test("workbooks are zips, spreadsheets, folders of sheets and empty folders, however deep; nothing else", async () => {
	const place = mkdtempSync(join(tmpdir(), "workbooks-"));
	try {
		const files = [
			"b/births.csv",
			"a/two.zip",
			"a/one/unit.csv",
			"a/one/plan/order.csv",
			"c.xlsx",
			"c.xls",
			"~$c.xlsx",
			".git/x.zip",
			"births.csv",
			"read.me",
			"out/units.csv",
		];
		for (const file of files) {
			mkdirSync(join(place, file, ".."), { recursive: true });
			writeFileSync(join(place, file), "");
		}
		mkdirSync(join(place, "d/e"), { recursive: true });
		symlinkSync(place, join(place, "again"));
		const found: string[] = [];
		for await (const path of workbooksIn(place, join(place, "out"))) found.push(path);
		expect(found).toEqual(["a/one", "a/two.zip", "b", "c.xls", "c.xlsx", "d/e"]);
	} finally {
		rmSync(place, { recursive: true });
	}
});
