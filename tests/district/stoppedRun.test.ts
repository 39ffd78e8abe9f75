import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { inventedUnit } from "./inventedUnit.ts";

/** So many that a worker is busy with them for much longer than a signal takes. */
const MANY = 400;
let place: string;
let out: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "stopped-"));
	out = join(place, "out");
	const zip = zipTexts(inventedUnit(1));
	for (const folder of [join(place, "district"), out]) mkdirSync(folder);
	for (let unit = 0; unit < MANY; unit++)
		writeFileSync(join(place, "district", `u${unit}.zip`), zip);
	writeFileSync(join(out, "units.csv"), "of before");
});
afterEach(() => rmSync(place, { recursive: true }));

test.each(["SIGINT", "SIGTERM"] as const)(
	"%s leaves the lists of before as they were, and no part of new ones",
	async (signal) => {
		const args = ["src/cli/units.ts", join(place, "district"), "--out", out, "--workers", "1"];
		const running = spawn("node_modules/.bin/node", args);
		let said = "";
		running.stderr.on("data", (text) => {
			said += text;
		});
		const ended = once(running, "close");
		await expect
			.poll(() => readdirSync(out).some((name) => /^\.units\.csv\.\d+\.part$/.test(name)), {
				timeout: 50_000,
			})
			.toBe(true);
		running.kill(signal);
		const [code] = await ended;
		expect({ code, said }).toEqual({ code: 1, said: expect.stringContaining("Stopped after ") });
		expect(readdirSync(out)).toEqual(["units.csv"]);
		expect(readFileSync(join(out, "units.csv"), "utf8")).toBe("of before");
	},
);
