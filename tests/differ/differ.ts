import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { type Way, ways } from "./saidBy.ts";
import type { Time } from "./times.ts";

/** The clock and language of the process in which each way is gone. */
const PLACES: Readonly<Record<Way, Readonly<Record<string, string>>>> = {
	made: { TZ: "UTC", LC_ALL: "en_GB.UTF-8" },
	read: { TZ: "Pacific/Kiritimati", LC_ALL: "tr_TR.UTF-8" },
	mixed: { TZ: "America/St_Johns", LC_ALL: "ar_EG.UTF-8" },
};

/** A workbook of which one way says something else than as it was made. */
export interface Difference {
	readonly number: number;
	readonly way: Way;
}

/** Plans invented workbooks, each in every way, in another time zone and language each. */
export function differ(cases: number, seed: number): Difference[] {
	const [made = [], ...others] = ways.map((way) =>
		linesOf("digests.ts", [way, String(seed), String(cases)], PLACES[way]),
	);
	if (made.length !== cases) throw new Error(`${made.length} of ${cases} workbooks were planned`);
	return others.flatMap((said, i) =>
		said.flatMap((digest, at) =>
			digest === made[at] ? [] : [{ number: seed + at, way: ways[i + 1] as Way }],
		),
	);
}

/** How long each of the invented workbooks takes, in a process of its own. */
export function times(cases: number, seed: number): Time[] {
	return linesOf("timings.ts", [String(seed), String(cases)]).map((line) => JSON.parse(line));
}

function linesOf(
	script: string,
	given: readonly string[],
	place: Readonly<Record<string, string>> = {},
): string[] {
	const { status, stdout, stderr } = spawnSync(
		process.execPath,
		[join(import.meta.dirname, script), ...given],
		{ encoding: "utf8", env: { ...process.env, ...place }, maxBuffer: 1e9 },
	);
	if (status !== 0) throw new Error(stderr);
	return stdout.trimEnd().split("\n");
}
