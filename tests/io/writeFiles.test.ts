import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as later } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { writeFiles } from "../../src/io/writeFiles.ts";

let place: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "write-"));
});
afterEach(() => rmSync(place, { recursive: true }));

const NAMES = ["a.csv", "b.csv", "below/c.csv"];
const BYTES = 3_000_000;
const contents = (letter: string) => letter.repeat(BYTES);
const filesOf = (letter: string) =>
	Object.fromEntries(NAMES.map((name) => [name, contents(letter)]));
const entries = () => readdirSync(place, { recursive: true }).map(String).sort();

/** Writes the same files again and again, each time with another letter, until it is killed. */
const WRITER = `
	import { writeFiles } from "./src/io/writeFiles.ts";
	const [place, names, bytes] = JSON.parse(process.argv[1]);
	console.log("begun");
	for (let at = 0; ; at++)
		await writeFiles(place, Object.fromEntries(names.map((n) => [n, "xyz"[at % 3].repeat(bytes)])));
`;

async function killedAfter(ms: number): Promise<void> {
	const given = JSON.stringify([place, NAMES, BYTES]);
	const writer = spawn("node_modules/.bin/node", ["--input-type=module", "-e", WRITER, given]);
	const ended = new Promise((resolve) => writer.once("exit", resolve));
	await new Promise((resolve) => writer.stdout.once("data", resolve));
	await later(ms);
	writer.kill("SIGKILL");
	await ended;
}

describe("killed while it writes", () => {
	test.each([0, 11, 29, 67, 110])(
		"after %i ms each file is whole",
		async (ms) => {
			await writeFiles(place, filesOf("w"));
			await killedAfter(ms);
			for (const name of NAMES) {
				const text = readFileSync(join(place, name), "utf8");
				expect("wxyz").toContain(text[0]);
				expect(text === contents(text[0] ?? ""), `${name} after ${ms} ms`).toBe(true);
			}
			await writeFiles(place, filesOf("z"));
			expect(entries(), "what was begun is cleared away").toEqual([...NAMES, "below"].sort());
		},
		60_000,
	);
});

describe("where one of the files cannot be written", () => {
	test("none has changed, and nothing that was begun is left", async () => {
		writeFileSync(join(place, "first.csv"), "before");
		const files = { "first.csv": "now", "new.csv": "now", "first.csv/within.csv": "now" };
		await expect(writeFiles(place, files)).rejects.toMatchObject({ code: "EEXIST" });
		expect(entries()).toEqual(["first.csv"]);
		expect(readFileSync(join(place, "first.csv"), "utf8")).toBe("before");
	});
});

test("what is no file but takes bytes is written to, and stays what it is", async () => {
	await expect(writeFiles("/dev", { full: "list" })).rejects.toMatchObject({ code: "ENOSPC" });
	await writeFiles("/dev", { null: "list" });
	expect(readFileSync("/dev/null", "utf8")).toBe("");
});
