import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { combineCommand } from "../../src/cli/combineCommand.ts";
import { headerOf } from "../../src/core/sheet.ts";
import { combinedOrderSheet } from "../../src/core/sheets/combinedOrder.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { started, terminal } from "./terminal.ts";

let place: string;
let out: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "combine-"));
	out = join(place, "all.csv");
});
afterEach(() => rmSync(place, { recursive: true }));

const run = (...given: string[]) => terminal(combineCommand, given);

/** Writes an order file and gives its path. */
function order(name: string, target: number, unit: string, ...more: string[]): string {
	const path = join(place, name);
	mkdirSync(join(path, ".."), { recursive: true });
	const row = `gauze,piece,0,0,10,${target},1,100,2,2027-03-09,2027-03-02,0.5,,no,100,2,${unit}`;
	writeFileSync(path, [headerOf(orderSheet).join(","), row, ...more].join("\n"));
	return path;
}

/** The list that was made, row by row by column. */
function list(): Record<string, string>[] {
	const { table } = readCsv("all.csv", readFileSync(out, "utf8"));
	expect(table.header).toEqual(headerOf(combinedOrderSheet));
	return table.rows.map((cells) =>
		Object.fromEntries(table.header.map((key, i) => [key, cells[i] ?? ""])),
	);
}

describe("list made", () => {
	test("0, and packs from the summed need", async () => {
		const made = await run(
			order("a.csv", 130, "North"),
			order("b.csv", 160, "South"),
			"--out",
			out,
		);
		expect(made).toMatchObject({ status: 0, stderr: "" });
		expect(made.stdout).toContain("2 orders added up");
		expect(list()).toMatchObject([
			{ item: "gauze", need: "290", order_packs: "3", cost: "6", split: "North: 130; South: 160" },
		]);
	});

	test("an order from a spreadsheet in Brazil, by the answer to what it leaves open", async () => {
		const path = order("a.csv", 130, "North");
		writeFileSync(
			path,
			readFileSync(path, "utf8").replace(",130,", ",1.300,").replace(",0.5,", ",2,"),
		);
		const open = await run(path, "--out", out);
		expect([open.status, open.stderr]).toEqual([
			1,
			expect.stringContaining("“1.300” can be read as 1.300 or as 1300"),
		]);
		expect((await run(path, "--out", out, "--numbers", "comma")).status).toBe(0);
		expect(list()[0]).toMatchObject({ need: "1300" });
		expect((await run(path, "--out", out, "--numbers", "both")).status).toBe(2);
	});

	test("files of one name in two folders are two units", async () => {
		const paths = [order("north/order.csv", 130, ""), order("south/order.csv", 160, "")];
		expect((await run(...paths, "--out", out)).status).toBe(0);
		expect(list()[0]).toMatchObject({ need: "290", units: "2" });
		for (const path of paths) expect(list()[0]?.split).toContain(path);
	});

	test("0 with advice where a file is given twice", async () => {
		const path = order("a.csv", 130, "North");
		const made = await run(path, path, "--out", out);
		expect(made.status).toBe(0);
		expect(made.stderr).toMatch(/^Advice, .*counted once\.\n$/);
		expect(list()[0]?.need).toBe("130");
	});
});

describe("some file could not be used", () => {
	test.each<[string, string | Uint8Array, RegExp]>([
		["a file that is no order", "bread,2\nmilk,1\n", /^Error, bad\.csv line 1, item: /m],
		[
			"a picture",
			Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a),
			/^Error, bad\.csv line 2: .*UTF-8/m,
		],
		["an empty file", "", /^Error, bad\.csv line 1: bad\.csv is empty/m],
	])("%s: 1, the problem, and the list of the others", async (_what, content, words) => {
		const bad = join(place, "bad.csv");
		writeFileSync(bad, content);
		const made = await run(bad, order("a.csv", 130, "North"), "--out", out);
		expect(made.status).toBe(1);
		expect(made.stderr).toMatch(words);
		expect(list()).toMatchObject([{ item: "gauze", need: "130" }]);
	});

	test("a bad row: 1, named by line and column, and the good rows added up", async () => {
		const path = order("a.csv", 130, "North", "soap,bar,none,0,1,2,1,1,,,,,,no,1,,North");
		const made = await run(path, "--out", out);
		expect(made.status).toBe(1);
		expect(made.stderr).toMatch(/^Error, a\.csv line 3, usable: .*"none"/);
		expect(list().map((row) => row.item)).toEqual(["gauze"]);
	});

	test("the same where a person starts it", () => {
		const bad = join(place, "bad.csv");
		writeFileSync(bad, "");
		const made = started("combine", [bad, order("a.csv", 130, "North"), "--out", out]);
		expect(made.status).toBe(1);
		expect(made.stderr).toMatch(/^Error, bad\.csv line 1: bad\.csv is empty/m);
		expect(made.stdout).toContain("1 orders added up");
		expect(list()).toMatchObject([{ item: "gauze", need: "130" }]);
	}, 60_000);

	test("a file that is not there: 1, and no list", async () => {
		const made = await run(join(place, "nowhere.csv"), "--out", out);
		expect(made.status).toBe(1);
		expect(made.stderr).toMatch(/^Error: .*nowhere\.csv/);
		expect(existsSync(out)).toBe(false);
	});
});

describe("wrong arguments", () => {
	test.each([
		["none", []],
		["no list to write", ["a.csv"]],
		["no orders", ["--out", "all.csv"]],
		["an option nobody knows", ["a.csv", "--out", "all.csv", "--quick"]],
	])("%s: 2 and how to use it", async (_what, given) => {
		const made = await run(...given);
		expect(made.status).toBe(2);
		expect(made.stderr).toContain("npm run combine -- ORDER.csv… --out FILE");
	});
});
