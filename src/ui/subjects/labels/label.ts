import { isUnreviewed } from "../../../core/language.ts";
import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";

/** For the smallest of prints. */
const notReviewedShort = isUnreviewed ? say.safety`translation not reviewed` : "";

/** A line of a label: what it is, and the value, or room to write it. */
export function labelLine(what: string, value: string | undefined, short = false): HTMLElement {
	return el(
		"p",
		{ class: short ? "label-line short" : "label-line" },
		el("span", { class: "label-what" }, what),
		value ? el("strong", {}, value) : el("span", { class: "line-to-write" }),
	);
}

/** Head of a label: its number or mark, to be read from across the room, and what it is. */
export function labelHead(mark: string, title: string): HTMLElement {
	return el(
		"div",
		{ class: "label-head" },
		el("p", { class: "label-number" }, mark),
		el("h2", {}, title),
	);
}

/** One label of one of the kinds; all are of one size, so that a sheet can be cut without measuring. */
export function label(kind: string, unit: string, ...children: readonly Child[]): HTMLElement {
	return el(
		"article",
		{ class: `paper-label label-${kind}${isUnreviewed ? " label-tight label-twice" : ""}` },
		...children,
		el("p", { class: "label-unit" }, [unit, notReviewedShort].filter(Boolean).join(" · ")),
	);
}
