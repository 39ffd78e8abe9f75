import { say } from "../../../core/say.ts";
import { counted, listed } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type OrderLine, orderLines } from "./orderLines.ts";
import { takenOrder } from "./takenOrder.ts";
import { takenHeadline } from "./takenWords.ts";

const MOST_NAMED = 3;

/** What to order today and what is urgent, in one line. */
export function orderHeadline(state: State): string | undefined {
	const lines = orderLines(state);
	if (lines.length === 0) return undefined;
	const taken = takenOrder(state);
	const less = taken?.isLess ? taken : undefined;
	const parts = [
		less && takenHeadline(less, unitSetting(state, "currency") ?? ""),
		urgentWords(lines, less !== undefined),
		!less && orderedWords(lines),
		!less && lateWords(lines),
		waitingWords(lines),
	].filter((part) => typeof part === "string");
	const words = parts.join(semicolon);
	return words.charAt(0).toUpperCase() + words.slice(1);
}

/** @param inShort how many, where much else is said in the line */
function urgentWords(lines: readonly OrderLine[], inShort: boolean): string | undefined {
	const urgent = lines.filter((line) => line.urgency === "emergency").map((line) => line.item);
	if (urgent.length === 0) return undefined;
	if (urgent.length === 1) return say`urgent: ${urgent[0]} runs out before an order can arrive`;
	return inShort
		? say`urgent: ${counted(urgent.length, "item")} run out before an order can arrive`
		: say`urgent: ${listed(urgent, MOST_NAMED)} run out before an order can arrive`;
}

function orderedWords(lines: readonly OrderLine[]): string | undefined {
	const ordered = lines.filter((line) => (line.packs ?? 0) > 0);
	const [only, ...more] = ordered;
	if (!only) return lines.some(isWaiting) ? undefined : say`nothing to order today`;
	const packs = ordered.reduce((sum, line) => sum + (line.packs ?? 0), 0);
	return more.length === 0
		? say`order ${counted(packs, "pack")} of ${only.item} today`
		: say`order ${counted(packs, "pack")} of ${ordered.length} items today`;
}

function lateWords(lines: readonly OrderLine[]): string | undefined {
	const late = lines.filter((line) => line.urgency === "late").map((line) => line.item);
	if (late.length === 0) return undefined;
	return late.length === 1
		? say`the order of ${late[0]} is late`
		: say`the orders of ${listed(late, MOST_NAMED)} are late`;
}

function waitingWords(lines: readonly OrderLine[]): string | undefined {
	const waiting = lines.filter(isWaiting).length;
	if (waiting === 0) return undefined;
	return waiting === 1 ? say`1 item needs a number` : say`${waiting} items need a number`;
}

function isWaiting({ packs }: OrderLine): boolean {
	return packs === undefined;
}
