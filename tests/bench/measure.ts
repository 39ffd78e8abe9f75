import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";

/** One line of a benchmark's table. */
export interface Measured {
	readonly what: string;
	/** Median of the runs, in milliseconds. */
	readonly ms: number;
	/** The quickest run: what is left where other programs do not disturb. */
	readonly quickestMs: number;
	readonly runs: number;
	/** How many times the peer's median this is, where a peer ran beside it. */
	readonly timesPeer?: number;
	/** How many times longer other programs take for tasks of theirs. */
	readonly timesFaster?: Readonly<Record<string, number>>;
	readonly heapMb?: number;
}

/** A figure that somebody asked for, and what was found. */
export interface Goal {
	readonly what: string;
	readonly found: number;
	readonly unit: string;
	/** Allowed is at most, or at least, this. */
	readonly limit: number;
	readonly bound: "at most" | "at least";
}

/** What a benchmark leaves behind. */
export interface Results {
	readonly machine: string;
	readonly date: string;
	readonly rows: readonly Measured[];
	readonly goals: readonly Goal[];
}

export const RESULTS = join(import.meta.dirname, "results");

const WARM_UP_RUNS = 3;
const LEAST_RUNS = 7;
const LONG_ENOUGH_MS = 1000;

interface Runs {
	readonly warmUp: number;
	readonly least: number;
}

/** Median time of a piece of work: warmed up, then repeated for about a second. */
export function measure(
	what: string,
	work: () => unknown,
	{ warmUp, least }: Runs = { warmUp: WARM_UP_RUNS, least: LEAST_RUNS },
): Measured {
	for (let run = 0; run < warmUp; run++) work();
	const times: number[] = [];
	const until = performance.now() + LONG_ENOUGH_MS;
	while (times.length < least || performance.now() < until) {
		const start = performance.now();
		work();
		times.push(performance.now() - start);
	}
	return summary(what, times);
}

/**
 * A peer's median time and that of the work beside it, the two in turn, so that each
 * has the same share of the tidying up that both leave to be done.
 */
export function measureInTurn(
	peer: readonly [what: string, work: () => unknown],
	own: readonly [what: string, work: () => unknown],
	{ warmUp, least }: Runs = { warmUp: WARM_UP_RUNS, least: LEAST_RUNS },
): [peer: Measured, own: Measured] {
	const both = [peer, own].map(([what, work]) => ({ what, work, times: [] as number[] }));
	const until = performance.now() + 2 * LONG_ENOUGH_MS;
	for (let run = 0; run < warmUp + least || performance.now() < until; run++)
		for (const { work, times } of both) {
			const start = performance.now();
			work();
			if (run >= warmUp) times.push(performance.now() - start);
		}
	const [first, second] = both.map(({ what, times }) => summary(what, times));
	return [first as Measured, against(first as Measured, second as Measured)];
}

/** The median of times measured, in ms. */
export function summary(what: string, times: readonly number[]): Measured {
	const sorted = times.toSorted((a, b) => a - b);
	const [quickestMs] = sorted as [number];
	return { what, ms: sorted[sorted.length >> 1] as number, quickestMs, runs: sorted.length };
}

/** A measurement beside its peer's. */
export function against(peer: Measured, measured: Measured): Measured {
	return { ...measured, timesPeer: measured.ms / peer.ms };
}

/** Heap in use now, in MB; after a collection where the process allows one. */
export function heapMb(): number {
	// What is let go in the first collection may let go of more in the second.
	for (let times = 0; times < 2; times++) (globalThis as { gc?: () => void }).gc?.();
	return process.memoryUsage().heapUsed / 1e6;
}

export const shown = (value: number) => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** Prints the table and writes it beside the benchmark, with the machine named. */
export function report(name: string, rows: readonly Measured[], goals: readonly Goal[] = []): void {
	console.log(`\n${name}`);
	for (const row of rows) {
		const peer = row.timesPeer === undefined ? "" : `  ${shown(row.timesPeer)} × peer`;
		const others = Object.entries(row.timesFaster ?? {})
			.map(([task, times]) => `  ${shown(times)} × faster than ${task}`)
			.join("");
		const heap = row.heapMb === undefined ? "" : `  ${shown(row.heapMb)} MB heap`;
		console.log(`  ${row.what.padEnd(60)} ${shown(row.ms).padStart(8)} ms${peer}${others}${heap}`);
	}
	for (const { what, found, unit, bound, limit } of goals)
		console.log(`  ${what}: ${shown(found)} ${unit}, wanted ${bound} ${limit}`);
	mkdirSync(RESULTS, { recursive: true });
	const machine = `${cpus()[0]?.model ?? "unknown"}, ${cpus().length} cores, Node ${process.version}`;
	const results: Results = { machine, date: new Date().toISOString().slice(0, 10), rows, goals };
	writeFileSync(join(RESULTS, `${name}.json`), `${JSON.stringify(results, null, "\t")}\n`);
}
