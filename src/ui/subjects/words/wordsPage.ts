import { glossary } from "../../../core/glossary.ts";
import { language } from "../../../core/language.ts";
import { say } from "../../../core/say.ts";
import { languages } from "../../../messages/languages.ts";
import { el, fill } from "../../dom/el.ts";
import { capital } from "../../format/capital.ts";
import type { OwnPage, PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printOut } from "../../print/printOut.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import termsInLanguages from "./termsInLanguages.json" with { type: "json" };
import { wordsTitle } from "./wordsTitle.ts";

const introduction = say`One word for one thing, wherever it stands in this workbook, on its sheets and on paper.`;

/** What each word means, to be looked up and to be hung beside the work sheet. */
export const wordsPage: OwnPage = {
	mount(place, { store }) {
		const onPrint = () => printOut(wordsOut, store.state);
		fill(
			place,
			pageHead(el("h1", {}, wordsTitle.title), introduction),
			el(
				"div",
				{ class: "tools" },
				el("button", { type: "button", onclick: onPrint }, wordsOut.name),
			),
			el("div", { class: "topics" }, wordsList()),
		);
		return {
			file: wordsTitle.file,
			onPaper: wordsOut,
			paint: () => {},
			show: () => {},
			destroy: () => {},
		};
	},
};

const wordsOut: PrintOut = {
	name: say`Print the words`,
	pages: (state) => [
		paperForm(
			state,
			"to-read",
			{ title: wordsTitle.title },
			el("p", { class: "paper-how" }, introduction),
			wordsList(),
		),
	],
};

function wordsList(): HTMLElement {
	const parts = glossary.flatMap(({ term, meaning }, at) => [
		el("dt", {}, el("strong", {}, capital(term))),
		el("dd", {}, meaning, ...otherWords(at)),
	]);
	return el("dl", { class: "words" }, ...parts);
}

/** The term in the other languages of the site, each with its name. */
function otherWords(at: number): HTMLElement[] {
	const words: Readonly<Record<string, readonly string[]>> = termsInLanguages;
	return languages
		.filter(({ code }) => code !== language)
		.map(({ code, name }) =>
			el("div", { class: "hint" }, `${name}: `, el("span", { lang: code }, words[code]?.[at])),
		);
}
