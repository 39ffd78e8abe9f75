import { el } from "../../dom/el.ts";
import { stateWord } from "./stateWord.ts";

/** A mark for each state of a kit and each result of a check; the word stands beside it, so that nothing hangs on colour. */
const marks: Readonly<Record<string, string>> = {
	ready: "✓",
	passed: "✓",
	to_reprocess: "↻",
	not_clean: "↻",
	in_repair: "✕",
	incomplete: "½",
	out_of_service: "–",
	"not finished": "…",
	"not used": "…",
	"cannot be read": "?",
};

/** A state in a mark and a word. */
export function stateMark(state: string): HTMLElement {
	const sure = state === "ready" || state === "passed" ? "good" : "wait";
	return el(
		"span",
		{ class: `kit-state ${sure}` },
		el("span", { class: "kit-mark", "aria-hidden": "true" }, marks[state] ?? "?"),
		` ${stateWord(state)}`,
	);
}
