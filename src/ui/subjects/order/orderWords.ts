import { say } from "../../../core/say.ts";
import { counted, listed } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { orderLines } from "./orderLines.ts";
import { takenOrder } from "./takenOrder.ts";
import { takenHeadline } from "./takenWords.ts";

const MOST_NAMED = 3;

/** What to order today and what is urgent, in one line. */
export function orderHeadline(state: State): string | undefined {
	const lines = orderLines(state);
	if (lines.length === 0) return undefined;
	const urgent = lines.filter((line) => line.urgency === "emergency").map((line) => line.item);
	const late = lines.filter((line) => line.urgency === "late");
	const ordered = lines.filter((line) => (line.packs ?? 0) > 0);
	const packs = ordered.reduce((sum, line) => sum + (line.packs ?? 0), 0);
	const [only, ...more] = ordered;
	const waiting = lines.filter((line) => line.packs === undefined).length;
	const taken = takenOrder(state);
	const isLess = taken?.isLess;
	const parts = [
		isLess && takenHeadline(taken, unitSetting(state, "currency") ?? ""),
		urgent.length > 0 &&
			(urgent.length === 1
				? say`urgent: ${urgent[0]} runs out before an order can arrive`
				: isLess
					? say`urgent: ${counted(urgent.length, "item")} run out before an order can arrive`
					: say`urgent: ${listed(urgent, MOST_NAMED)} run out before an order can arrive`),
		!isLess &&
			(only
				? more.length === 0
					? say`order ${counted(packs, "pack")} of ${only.item} today`
					: say`order ${counted(packs, "pack")} of ${ordered.length} items today`
				: waiting === 0 && say`nothing to order today`),
		!isLess &&
			late.length > 0 &&
			(late.length === 1
				? say`the order of ${late[0]?.item} is late`
				: say`the orders of ${listed(
						late.map(({ item }) => item),
						MOST_NAMED,
					)} are late`),
		waiting > 0 &&
			(waiting === 1 ? say`1 item needs a number` : say`${waiting} items need a number`),
	].filter((part) => typeof part === "string");
	const words = parts.join(semicolon);
	return words.charAt(0).toUpperCase() + words.slice(1);
}
