import { parentPort } from "node:worker_threads";
import { type Broken, dryRun, kills } from "./runner.ts";

/** What a worker is asked: to run a file with nothing broken, or some of its tests with a mutant in place. */
export type Question =
	| { readonly source: string; readonly mutants: number }
	| { readonly source: string; readonly broken: Broken; readonly names: readonly string[] };

parentPort?.on("message", (question: Question) => {
	const { source } = question;
	parentPort?.postMessage(
		"broken" in question
			? kills(question.broken, source, question.names)
			: dryRun(source, question.mutants),
	);
});
