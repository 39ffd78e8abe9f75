import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import { stateMark } from "../kits/stateMark.ts";
import { untilOrReason } from "../kits/untilOrReason.ts";
import type { KitRow } from "./kitRow.ts";
import { waitsForTest } from "./waitsForRound.ts";

/** What a person can do with a kit on the page. */
export interface KitActs {
	used(kit: string): void;
	check(kit: string): void;
}

/** Each kit as it stands now, the one to use next first, with the act that comes next for it. */
export function kitList(rows: readonly KitRow[], acts: KitActs): HTMLElement {
	return el("ul", { class: "kits-now" }, ...inOrder(rows).map((row) => line(row, acts)));
}

/** The ready ones in the order of use, then as in the register. */
function inOrder(rows: readonly KitRow[]): KitRow[] {
	const place = (row: KitRow) => numberIn(row.use_next) ?? Number.MAX_SAFE_INTEGER;
	return [...rows].sort((a, b) => place(a) - place(b));
}

function line(row: KitRow, acts: KitActs): HTMLElement {
	const kit = wordIn(row.kit);
	const isNext = numberIn(row.use_next) === 1;
	return el(
		"li",
		{ class: isNext ? "next" : undefined },
		el(
			"div",
			{},
			el("strong", { class: "kit-name" }, kit),
			" ",
			stateMark(wordIn(row.state)),
			" ",
			isNext && el("span", { class: "kit-next" }, say`use this one next`),
			el("p", { class: "kit-detail" }, untilOrReason(row)),
		),
		button(row, kit, acts),
	);
}

/** What comes next for it: to be used, or after its round to be tested. */
function button(row: KitRow, kit: string, { used, check }: KitActs): HTMLElement | false {
	if (wordIn(row.state) === "ready") return act(say`Kit ${kit} was used`, () => used(kit));
	return waitsForTest(row) && act(say`Test kit ${kit}`, () => check(kit));
}

function act(words: string, onclick: () => void): HTMLElement {
	return el("button", { type: "button", class: "bench-act", onclick }, words);
}
