import { parentPort, workerData } from "node:worker_threads";
import { kills } from "./runner.ts";

/** A mutant and the tests that come by it, file by file, the most specific first. */
export interface Task {
	readonly mutant: string;
	readonly files: readonly { readonly file: string; readonly names: readonly string[] }[];
	/** How long they take with nothing broken. */
	readonly ms: number;
}

for (const { mutant, files } of workerData as readonly Task[]) {
	parentPort?.postMessage({ mutant });
	const killed = files.some(({ file, names }) => kills(mutant, file, names));
	parentPort?.postMessage({ mutant, killed });
}
