import { type Outcome, problemsOf } from "../../core/outcome.ts";
import { problemWords } from "./problemWords.ts";

/** Why there is no answer, the first reason of it; "" where there is one, or nothing asks for one. */
export function waitsFor(outcome: Outcome<unknown> | undefined): string {
	const [first] = outcome ? problemsOf(outcome) : [];
	return first ? problemWords(first) : "";
}
