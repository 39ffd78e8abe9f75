import { el } from "../../dom/el.ts";
import type { State } from "../../state/store.ts";
import { kitShareView } from "./kitShareView.ts";
import { scorecardSentence } from "./scorecardWords.ts";

/** How good the forecast was, in words, and what else the register teaches. */
export function scorecardView(state: State): HTMLElement | undefined {
	const words = scorecardSentence(state);
	const share = kitShareView(state);
	if (words === undefined && !share) return undefined;
	return el("div", { class: "sayings" }, words && el("p", { class: "saying" }, words), share);
}
