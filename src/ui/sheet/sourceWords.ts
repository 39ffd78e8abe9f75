import { say } from "../../core/say.ts";
import type { Source } from "../../core/source.ts";
import { type Child, el } from "../dom/el.ts";
import { semicolon } from "../format/semicolon.ts";
import { markWords } from "./markWords.ts";

/** A source in words: title, place, how sure, and what other sources say. The address is text: no request leaves. */
export function sourceWords({ title, place, url, mark, disagreement }: Source): Child[] {
	const sure =
		mark === "common practice, no source" || mark === "definition" ? "" : ` (${markWords(mark)})`;
	return [
		el("strong", {}, say`Source.`),
		` ${place ? title + semicolon + place : title}${sure}.`,
		url && el("span", { class: "address" }, ` ${url}`),
		disagreement &&
			el(
				"span",
				{ class: "disagreement" },
				" ",
				el("strong", {}, say`Others differ:`),
				" ",
				disagreement,
			),
	];
}
