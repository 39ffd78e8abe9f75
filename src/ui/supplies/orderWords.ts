import { say } from "../../core/say.ts";
import type { State } from "../book/store.ts";
import { counted, listed } from "../shown/counted.ts";
import { orderLines } from "./orderLines.ts";

const MOST_NAMED = 3;

/** What to order today and what is urgent, in one line. */
export function orderHeadline(state: State): string | undefined {
	const lines = orderLines(state);
	if (lines.length === 0) return undefined;
	const urgent = lines.filter((line) => line.urgency === "emergency").map((line) => line.item);
	const late = lines.filter((line) => line.urgency === "late");
	const ordered = lines.filter((line) => (line.packs ?? 0) > 0);
	const packs = ordered.reduce((sum, line) => sum + (line.packs ?? 0), 0);
	const named = ordered.length === 1 ? `of ${ordered[0]?.item}` : say`of ${ordered.length} items`;
	const waiting = lines.filter((line) => line.packs === undefined).length;
	const parts = [
		urgent.length > 0 &&
			say`urgent: ${listed(urgent, MOST_NAMED)} ${urgent.length === 1 ? "runs" : "run"} out before an order can arrive`,
		ordered.length > 0
			? say`order ${counted(packs, "pack")} ${named} today`
			: waiting === 0 && say`nothing to order today`,
		late.length > 0 && say`${late.length} of them ${late.length === 1 ? "is" : "are"} late`,
		waiting > 0 && say`${counted(waiting, say`item waits`, say`items wait`)} for a number`,
	].filter((part): part is string => part !== false);
	const words = parts.join("; ");
	return words.charAt(0).toUpperCase() + words.slice(1);
}
