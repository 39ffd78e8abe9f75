import { parentPort } from "node:worker_threads";
import { kills } from "./runner.ts";

/** A mutant and the tests that come by it, file by file, the most specific first. */
export interface Task {
	readonly mutant: string;
	readonly files: readonly { readonly file: string; readonly names: readonly string[] }[];
	/** How long they take with nothing broken. */
	readonly ms: number;
}

parentPort?.on("message", ({ mutant, files }: Task) => {
	parentPort?.postMessage(files.some(({ file, names }) => kills(mutant, file, names)));
});
