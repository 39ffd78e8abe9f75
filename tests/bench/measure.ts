import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";

/** One line of a benchmark's table. */
export interface Measured {
	readonly what: string;
	/** Median of the runs, in milliseconds. */
	readonly ms: number;
	readonly runs: number;
	/** How many times the peer's median this is, where a peer ran beside it. */
	readonly timesPeer?: number;
	readonly heapMb?: number;
}

const WARM_UP_RUNS = 3;
const LEAST_RUNS = 7;
const LONG_ENOUGH_MS = 1000;

/** Median time of a piece of work: warmed up, then repeated for about a second. */
export function measure(what: string, work: () => unknown): Measured {
	for (let run = 0; run < WARM_UP_RUNS; run++) work();
	const times: number[] = [];
	const until = performance.now() + LONG_ENOUGH_MS;
	while (times.length < LEAST_RUNS || performance.now() < until) {
		const start = performance.now();
		work();
		times.push(performance.now() - start);
	}
	times.sort((a, b) => a - b);
	return { what, ms: times[times.length >> 1] as number, runs: times.length };
}

/** A measurement beside its peer's. */
export function against(peer: Measured, measured: Measured): Measured {
	return { ...measured, timesPeer: measured.ms / peer.ms };
}

/** Heap in use now, in MB; after a collection where the process allows one. */
export function heapMb(): number {
	(globalThis as { gc?: () => void }).gc?.();
	return process.memoryUsage().heapUsed / 1e6;
}

const shown = (value: number) => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** Prints the table and writes it beside the benchmark, with the machine named. */
export function report(name: string, rows: readonly Measured[]): void {
	console.log(`\n${name}`);
	for (const row of rows) {
		const peer = row.timesPeer === undefined ? "" : `  ${shown(row.timesPeer)} × peer`;
		const heap = row.heapMb === undefined ? "" : `  ${shown(row.heapMb)} MB heap`;
		console.log(`  ${row.what.padEnd(52)} ${shown(row.ms).padStart(8)} ms${peer}${heap}`);
	}
	const folder = join(import.meta.dirname, "results");
	mkdirSync(folder, { recursive: true });
	const machine = `${cpus()[0]?.model ?? "unknown"}, ${cpus().length} cores, Node ${process.version}`;
	writeFileSync(join(folder, `${name}.json`), `${JSON.stringify({ machine, rows }, null, "\t")}\n`);
}
