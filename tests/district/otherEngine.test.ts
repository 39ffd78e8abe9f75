import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { unitsCommand } from "../../src/cli/unitsCommand.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { workbookFiles } from "../../src/io/workbookFiles.ts";
import { unitWith } from "../core/smallUnit.ts";
import { expectWithin } from "../expectWithin.ts";
import { terminal } from "../io/terminal.ts";
import { inventedUnit, writeUnit } from "./inventedUnit.ts";
import { type Row, rowsOfScript } from "./otherEngine.ts";

const MANY = 10;

let place: string;
let asked: Row[][];

beforeAll(async () => {
	place = mkdtempSync(join(tmpdir(), "engine-"));
	const [district, out] = [join(place, "district"), join(place, "out")];
	for (let seed = 0; seed < MANY; seed++) writeUnit(join(district, `u${seed}`), inventedUnit(seed));
	writeFileSync(join(district, "torn.zip"), "no zip");
	const { status } = await terminal(unitsCommand, [district, "--out", out, "--workers", "2"]);
	expect(status).toBe(0);
	asked = await rowsOfScript(out);
}, 120_000);
afterAll(() => rmSync(place, { recursive: true }));

function list(file: string): Record<string, string>[] {
	const { table } = readCsv(file, readFileSync(join(place, "out", file), "utf8"));
	return table.rows.map((cells) =>
		Object.fromEntries(table.header.map((key, i) => [key, cells[i] ?? ""])),
	);
}

/** The engine adds up cells of six decimals, the program what they stand for. */
const WITHIN = MANY * 1e-6;

function expectSums(
	found: Row,
	wanted: Record<string, string> | undefined,
	keys: readonly string[],
) {
	for (const key of keys) {
		const text = wanted?.[key] ?? "missing";
		if (found[key] === null || found[key] === undefined) expect([key, text]).toEqual([key, ""]);
		else expectWithin(Number(found[key]), Number(text), WITHIN, key);
	}
}

describe("another engine finds the same", () => {
	test("units by state: none is missing", () => {
		const units = list("units.csv");
		const [states = []] = asked;
		expect(Object.fromEntries(states.map((row) => [row.state, Number(row.units)]))).toEqual({
			look: MANY,
			not_read: 1,
		});
		const kits = units.reduce((sum, row) => sum + Number(row.kits_needed), 0);
		expect(states.reduce((sum, row) => sum + Number(row.kits_needed), 0)).toBe(kits);
	});

	test("the order, item by item", () => {
		const order = list("units-order.csv");
		const [, items = []] = asked;
		expect(items.length).toBe(order.length);
		for (const row of items) {
			const own = order.find(({ item, measure }) => item === row.item && measure === row.measure);
			const sums = [
				"usable",
				"on_order",
				"target_stock",
				"need",
				"pack_size",
				"order_packs",
				"unit_packs",
			];
			expectSums(row, own, ["units", "units_short", ...sums]);
			expect([row.run_out_on ?? "", row.order_by ?? ""]).toEqual([own?.run_out_on, own?.order_by]);
		}
	});

	test("the months, measure by measure", () => {
		const months = list("units-month.csv");
		const [, , sums = []] = asked;
		expect(sums.length).toBe(months.length);
		for (const row of sums) {
			const own = months.find(
				({ month, measure }) => month === row.month && measure === row.measure,
			);
			expectSums(row, own, [
				"units_planned",
				"planned_expected",
				"units_done",
				"done",
				"units_both",
				"change",
			]);
		}
	});

	test("the unit that could not be read stands first", () => {
		const [, , , first = []] = asked;
		expect(first[0]).toMatchObject({ path: "torn.zip", state: "not_read" });
	});
});

test("a district whose units record nothing has its sums too", async () => {
	const district = join(place, "no-records");
	const out = join(place, "no-records-out");
	writeUnit(join(district, "one"), workbookFiles(unitWith({ unit_name: "One" })));
	await terminal(unitsCommand, [district, "--out", out, "--workers", "1"]);
	const [states = []] = await rowsOfScript(out);
	expect(states).toMatchObject([{ units: "1" }]);
});
