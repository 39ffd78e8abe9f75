import type { Problem } from "../../problem.ts";
import { type TruthKind, truthKind } from "./truthKind.ts";

/** These stop no round by themselves. */
const OF_THE_STORE: ReadonlySet<TruthKind> = new Set(["short", "late", "count"]);

/** Problems that stop a safe round: a number is missing, or what stands is not enough. */
export function stopProblems(problems: readonly Problem[]): Problem[] {
	return problems.filter((problem) => {
		const kind = truthKind(problem);
		return kind !== undefined && !OF_THE_STORE.has(kind);
	});
}
