import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { unitsCommand } from "../../src/cli/unitsCommand.ts";
import { started, terminal } from "../io/terminal.ts";
import { inventedUnit, writeUnit } from "./inventedUnit.ts";

let place: string;
let district: string;
let out: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "units-"));
	district = join(place, "district");
	out = join(place, "new", "out");
});
afterEach(() => rmSync(place, { recursive: true }));

const run = () => terminal(unitsCommand, [district, "--out", out, "--workers", "1"]);

test("as a person starts it: 0, and the folder written to is no unit; what killed runs began is cleared away", async () => {
	writeUnit(join(district, "one"), inventedUnit(1));
	out = join(district, "out");
	const planned = { status: 0, stdout: expect.stringContaining("1 of 1 units planned") };
	const { status, stdout } = started("units", [district, "--out", out, "--workers", "1"]);
	expect({ status, stdout }).toEqual(planned);
	const lists = readdirSync(out);
	// No process has this number.
	mkdirSync(join(out, ".piles.4194305.part"));
	writeFileSync(join(out, ".units.csv.4194305.part"), "half");
	expect(await run()).toMatchObject(planned);
	expect(readdirSync(out)).toEqual(lists);
}, 60_000);

test("1 and a plain reason where the lists cannot be written; nothing of them is left", async () => {
	writeUnit(join(district, "one"), inventedUnit(1));
	mkdirSync(join(out, "units-order.csv", "below"), { recursive: true });
	const { status, stderr } = await run();
	expect({ status, stderr }).toEqual({
		status: 1,
		stderr: expect.stringContaining(
			`Error: the files could not be written to ${out}: a folder stands where a file is needed. Whatever is there is whole.`,
		),
	});
	expect(readdirSync(out)).toEqual(["units-order.csv"]);
}, 60_000);

test.each([
	["no folder to write to", () => [district]],
	["two districts", () => [district, district, "--out", out]],
	["no workers", () => [district, "--out", out, "--workers", "0"]],
	["part of a worker", () => [district, "--out", out, "--workers", "1.5"]],
])("2 with usage: %s", async (_, given) => {
	const { status, stderr } = await terminal(unitsCommand, given());
	expect(status).toBe(2);
	expect(stderr).toContain("npm run units -- FOLDER --out FOLDER");
});
