import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { titleOf } from "../shell/titleOf.ts";
import { type Findable, whereWords } from "./findable.ts";
import { MOST_HITS, type Search } from "./search.ts";

const LONGEST_TEXT = 160;

/** One hit: "Kits, line 3, Note: mask torn", with the way to it. */
export function hitItem(hit: Findable, jump: (place: Place) => void): HTMLLIElement {
	const long = hit.text.length > LONGEST_TEXT;
	return el(
		"li",
		{},
		el(
			"button",
			{ type: "button", onclick: () => jump(hit.place) },
			el("span", { class: "where" }, `${whereWords(hit)}: `),
			long ? `${hit.text.slice(0, LONGEST_TEXT)}…` : hit.text,
		),
	);
}

/** How many places were found, for eyes and ears. */
export function foundWords({ count, done }: Search): string {
	if (!done) return say`${count} found so far; the computed sheets are still being searched.`;
	if (count === 0) return say`Nothing found.`;
	if (count === 1) return say`1 place found.`;
	return count > MOST_HITS
		? say`${count} places found; the first ${MOST_HITS} are listed. More letters find fewer.`
		: say`${count} places found.`;
}

/** Names the sheets that were not searched, with the way to search them after all. */
export function leftOut({ left }: Search, searchThem: () => void): Child[] {
	if (left.length === 0) return [];
	return [
		el(
			"p",
			{ class: "unit" },
			say`Not searched, because working them out takes long when the plan has many days: ${left.map(titleOf).join(", ")}.`,
		),
		el("button", { type: "button", onclick: searchThem }, say`Search these too`),
	];
}
