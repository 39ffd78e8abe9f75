import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { unitsCommand } from "../../src/cli/unitsCommand.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { workbookFiles } from "../../src/io/workbookFiles.ts";
import { zipFiles } from "../../src/io/zipFiles.ts";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { unitWith } from "../core/smallUnit.ts";
import { expectWithin } from "../expectWithin.ts";
import { Chance } from "../fuzz/chance.ts";
import { mutations } from "../fuzz/mutated.ts";
import { terminal } from "../io/terminal.ts";

/** One in twenty is damaged, in each way that the fuzzer knows: its zip, or a file in it. */
const ONE_IN = 20;
const KINDS = ["zip", "file"] as const;
const COUNT = mutations.length * ONE_IN;
const pathOf = (unit: number) => `u${String(unit).padStart(4, "0")}.zip`;
const isDamaged = (unit: number) => unit % ONE_IN === 0;
const filesOf = (unit: number) =>
	workbookFiles(unitWith({ unit_name: `U${unit}`, births_per_day: 1 + (unit % 9) }));

let place: string;
let status: number | null;
beforeAll(async () => {
	place = mkdtempSync(join(tmpdir(), "damaged-"));
	mkdirSync(join(place, "district"));
	for (let unit = 0; unit < COUNT; unit++) {
		const path = join(place, "district", pathOf(unit));
		writeFileSync(path, isDamaged(unit) ? damagedZip(unit) : zipTexts(filesOf(unit)));
	}
	({ status } = await terminal(unitsCommand, [
		join(place, "district"),
		"--out",
		join(place, "out"),
		"--workers",
		"2",
	]));
}, 120_000);
afterAll(() => rmSync(place, { recursive: true }));

function damagedZip(unit: number): Uint8Array {
	const chance = new Chance(unit + 1);
	const number = unit / ONE_IN;
	const mutation = mutations[number];
	const [files, others] = [filesOf(unit), filesOf(unit + 1)];
	const encoder = new TextEncoder();
	const words = ['"', ",", ";", "\0", "\r", "=1+1", "key,value"].map((word) =>
		encoder.encode(word),
	);
	const damaged = (own: Uint8Array, other: Uint8Array) =>
		mutation?.(own, chance, { words, other }) ?? own;
	if (KINDS[number % KINDS.length] === "zip") return damaged(zipTexts(files), zipTexts(others));
	const all = Object.entries(files).map(([name, text]) => [name, encoder.encode(text)]);
	const bytes = Object.fromEntries(all);
	const name = chance.pick(Object.keys(files));
	return zipFiles({ ...bytes, [name]: damaged(bytes[name], encoder.encode(others[name])) });
}

function list(file: string): Record<string, string>[] {
	const { table } = readCsv(file, readFileSync(join(place, "out", file), "utf8"));
	return table.rows.map((cells) =>
		Object.fromEntries(table.header.map((key, i) => [key, cells[i] ?? ""])),
	);
}

test("every unit has its row, the damaged too", () => {
	expect(status).toBe(0);
	const all = Array.from({ length: COUNT }, (_, unit) => pathOf(unit));
	expect(list("units.csv").map(({ path }) => path)).toEqual(all);
});

test("no good one is lost: all of them are planned, alike where they are alike", () => {
	const planned = new Map<string, string>();
	for (const [unit, row] of list("units.csv").entries()) {
		if (isDamaged(unit)) continue;
		const { unit: name, path, in_words: words, ...numbers } = row;
		expect([name, path, words]).not.toContain("");
		expect(["look", "in_order"]).toContain(row.state);
		const births = String(unit % 9);
		const same = JSON.stringify(numbers);
		expect(planned.get(births) ?? same).toBe(same);
		planned.set(births, same);
	}
	expect(planned.size).toBe(9);
});

test("each that cannot be read says why, and is in no sum; some damage does", () => {
	const unread = list("units.csv").filter(({ state }) => state === "not_read");
	expect(unread.length).toBeGreaterThan(mutations.length / 4);
	const named = new Set(
		list("units-problems.csv")
			.filter(({ weight }) => weight === "error")
			.map(({ path }) => path),
	);
	for (const { path, in_words: why } of unread) {
		expect(why).not.toBe("");
		expect(named).toContain(path);
	}
	const out = new Set(unread.map(({ path }) => path));
	const needs = list("units-needs.csv");
	expect(needs.filter(({ path }) => out.has(path))).toEqual([]);
	for (const row of list("units-order.csv")) {
		const own = needs.filter(({ item, measure }) => item === row.item && measure === row.measure);
		const sum = own.reduce((all, { need }) => all + Number(need), 0);
		// Cells of six decimals are added up here.
		expectWithin(Number(row.need), sum, COUNT * 1e-6, row.item ?? "");
	}
});
