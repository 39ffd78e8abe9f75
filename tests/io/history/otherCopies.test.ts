import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { withRow } from "../../../src/core/edit/withRow.ts";
import { bornIn, type Copy } from "../../../src/core/merge/descent.ts";
import { mergeCopies } from "../../../src/core/merge/mergeCopies.ts";
import { withSave } from "../../../src/core/merge/withSave.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { clearForm } from "../../../src/io/history/clearForm.ts";
import { readCopy } from "../../../src/io/history/readCopy.ts";
import { unreadCopy } from "../../../src/io/history/unreadCopy.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { zipWorkbook } from "../../../src/io/zipWorkbook.ts";
import { smallUnit } from "../../core/smallUnit.ts";

const folder = join(import.meta.dirname, "../firstEdition");
const description = {
	name: "datapackage.json",
	bytes: new TextEncoder().encode('{"resources":[]}'),
};
/** The demo as the first edition of the format had it, which remembered nothing. */
const old = (change = (text: string) => text, of = "") =>
	readCopy(
		readFiles([
			...readdirSync(folder).map((name) => {
				const text = readFileSync(join(folder, name), "utf8");
				return { name, bytes: new TextEncoder().encode(name === of ? change(text) : text) };
			}),
			description,
		]),
	);
const save = { id: "k3f9a2", at: "2027-03-01T10:00", by: "Amina" };
const saved = ({ descent }: Copy, next: Workbook): Copy => {
	const workbook = clearForm(next);
	const bytes = zipWorkbook(workbook, undefined, withSave(descent, workbook, save));
	// Under another name it is the same copy.
	return readCopy(readFiles([{ name: "workbook (2).zip", bytes }]));
};
const setting = ({ workbook }: Copy, key: string) =>
	workbook.tables["unit.csv"]?.rows.find((row) => row[0] === key)?.[1];
const named = (workbook: Workbook, name: string) =>
	withRow(workbook, "unit.csv", { value: name }, 0);

test("a copy of an older edition is where the new one comes from, as long as nobody changed it", () => {
	const before = old();
	const now = saved(before, withRow(before.workbook, "births.csv", { note: "market" }, 0));
	for (const [ours, theirs] of [
		[now, before],
		[before, now],
	] as const) {
		const { conflicts, workbook, parted } = mergeCopies(ours, theirs);
		expect(conflicts).toEqual([]);
		expect(workbook.tables["births.csv"]?.rows[0]).toContain("market");
		expect(parted?.id).toBe(before.descent.saves[0]?.id);
	}
});

test("one that the older program went on with: what was added is taken, what differs is asked", () => {
	const before = old();
	const now = saved(before, withRow(before.workbook, "kits.csv", { note: "torn" }, 0));
	const other = old(
		(text) => `${text.trimEnd()}\nK99,${text.split("\n")[1]?.split(",")[1]},in_service,,\n`,
		"kits.csv",
	);
	const together = mergeCopies(now, other);
	expect(together.conflicts).toMatchObject([
		{ row: "K1", column: "note", ours: { text: "torn" }, theirs: { text: "Bed 1" } },
	]);
	expect(together.workbook.tables["kits.csv"]?.rows.map(([kit]) => kit)).toContain("K99");
	expect(together.workbook.tables["kits.csv"]?.rows[0]).toContain("torn");
});

test("a unit renamed in one copy has its new name", () => {
	const before = readCopy({ workbook: smallUnit() });
	const renamed = saved(before, named(before.workbook, "New name"));
	for (const [ours, theirs] of [
		[renamed, before],
		[before, renamed],
	] as const) {
		const together = mergeCopies(ours, theirs);
		expect(together.conflicts).toEqual([]);
		expect(setting(together, "unit_name")).toBe("New name");
	}
});

test("a foreign workbook shares no save, and no line of either is lost", () => {
	const ours = readCopy({ workbook: smallUnit() });
	const theirs = old();
	const together = mergeCopies(ours, theirs);
	expect(together.parted).toBe(undefined);
	const kits = together.workbook.tables["kits.csv"]?.rows.map(([kit]) => kit);
	for (const { workbook } of [ours, theirs])
		expect(kits).toEqual(
			expect.arrayContaining(workbook.tables["kits.csv"]?.rows.map(([kit]) => kit) ?? []),
		);
	for (const { origins } of Object.values(together.descent.sheets))
		for (const origin of origins)
			expect(together.descent.saves.map(({ id }) => id)).toContain(bornIn(origin));
});

test("a copy of a newer edition is brought together there, and not here", () => {
	const problems = unreadCopy({
		workbook: { ...smallUnit(), format: 99 },
		problems: [],
		questions: [],
	});
	expect(problems.map(({ code }) => code)).toEqual(["newer-format"]);
	expect(unreadCopy({ workbook: smallUnit(), problems: [], questions: [] })).toEqual([]);
});
