import { spawnSync } from "node:child_process";
import {
	chmodSync,
	cpSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";

let place: string;
let out: string;
beforeEach(() => {
	place = mkdtempSync(join(tmpdir(), "faults "));
	chmodSync(place, 0o755);
	cpSync("sample-csv", join(place, "unit"), { recursive: true });
	out = join(place, "out");
	mkdirSync(out);
	writeFileSync(join(out, "week-total.csv"), "the plan of before");
});
afterEach(() => rmSync(place, { recursive: true }));

/** Plans through a shell, with what goes before the program; who may write everywhere gives that up first. */
function planned(shell: string) {
	const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
	const command = `${shell} exec node_modules/.bin/node src/cli/plan.ts "$0" --out "$1"`;
	const { status, stderr } = spawnSync("bash", ["-c", command, join(place, "unit"), out], {
		...nobody,
		encoding: "utf8",
	});
	return { status, last: stderr.trimEnd().split("\n").at(-1) };
}

test.each([
	["a folder that may not be written", 0o555, "", "this user may not write there"],
	[
		"a disk that takes no more than some kilobytes of a file",
		0o777,
		"ulimit -f 8;",
		"the file is larger than",
	],
])(
	"%s: 1, a plain message, and the older file is whole",
	(_, mode, shell, reason) => {
		chmodSync(out, mode);
		const { status, last } = planned(shell);
		expect({ status, last }).toEqual({
			status: 1,
			last: expect.stringContaining(`Error: the files could not be written to ${out}: ${reason}`),
		});
		expect(readdirSync(out)).toEqual(["week-total.csv"]);
		expect(readFileSync(join(out, "week-total.csv"), "utf8")).toBe("the plan of before");
	},
	60_000,
);
