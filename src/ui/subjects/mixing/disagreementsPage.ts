import type { Place } from "../../../core/problem.ts";
import { readSettings } from "../../../core/read/readSettings.ts";
import { say } from "../../../core/say.ts";
import { type SettingKey, settings } from "../../../core/sheets/settings.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { el, fill } from "../../dom/el.ts";
import { withinSentence } from "../../dom/withinSentence.ts";
import { DASH, shownFigure } from "../../format/shownFigure.ts";
import type { OwnPage } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printOut } from "../../print/printOut.ts";
import { markWords } from "../../sheet/markWords.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import { titleOf } from "../../shell/titleOf.ts";
import type { State } from "../../state/store.ts";
import { disagreements } from "./disagreements.ts";
import { disagreementsTitle } from "./disagreementsTitle.ts";

type GoTo = (place: Place) => void;

/** Where guidelines disagree: what each says, how sure that is, and what this unit does. */
export const disagreementsPage: OwnPage = {
	mount(place, { store, goTo }) {
		const list = el("div", { class: "topics" });
		const print = { name: say`Print this page`, pages: pagesOf };
		const onPrint = () => printOut(print, store.state);
		fill(
			place,
			pageHead(
				el("h1", {}, say`${disagreements().length} things on which guidelines disagree`),
				introduction,
			),
			el("div", { class: "tools" }, el("button", { type: "button", onclick: onPrint }, print.name)),
			list,
		);
		const paint = (state: State) => fill(list, ...topicParts(state, goTo));
		paint(store.state);
		return {
			file: disagreementsTitle.file,
			onPaper: print,
			paint,
			show: () => {},
			destroy: () => {},
		};
	},
};

const introduction = say`Your national protocol decides, then the maker's instructions. “Seen” was read in the place named; “from memory” was not read again; an estimate is a starting value to replace by your own.`;

function pagesOf(state: State): HTMLElement[] {
	return [
		paperForm(
			state,
			"to-read",
			{ title: disagreementsTitle.title },
			el("p", { class: "paper-how" }, introduction),
			el("div", { class: "topics" }, ...topicParts(state)),
		),
	];
}

function topicParts(state: State, goTo?: GoTo): HTMLElement[] {
	const read = readSettings(state.workbook.tables[unitSheet.file]).settings;
	return disagreements().map(({ topic, source, settings: keys, here, file }) =>
		el(
			"section",
			{ class: "topic" },
			el("h2", {}, topic),
			el(
				"ul",
				{ class: "says" },
				el(
					"li",
					{},
					el("span", { class: "mark" }, markWords(source.mark)),
					` ${source.place ? say`${source.title}: ${source.place}.` : `${source.title}.`} `,
					source.url && el("span", { class: "address" }, source.url),
				),
				el("li", {}, el("strong", {}, say`Others:`), " ", source.disagreement),
			),
			...keys.map((key) => settingLine(key, shownFigure(read[key]), goTo, read[key].origin)),
			(here || file) &&
				el(
					"p",
					{ class: "here" },
					here,
					file && goTo ? " " : "",
					file && goTo && link(say`Go to ${titleOf(file)}`, { file, line: null, column: "" }, goTo),
				),
		),
	);
}

function settingLine(
	key: SettingKey,
	value: string,
	goTo: GoTo | undefined,
	origin: { readonly kind: string; readonly place?: Place },
): HTMLElement {
	const { label, unit } = settings[key];
	const place = origin.place ?? { file: unitSheet.file, line: null, column: key };
	return el(
		"p",
		{ class: "here" },
		...withinSentence(
			(shown) =>
				origin.kind === "default"
					? say`${label}, here: ${shown} (default).`
					: say`${label}, here: ${shown}.`,
			el("strong", {}, value === DASH ? value : `${value} ${unit}`.trim()),
		),
		" ",
		goTo && link(say`Go to the setting`, place, goTo),
	);
}

function link(words: string, place: Place, goTo: GoTo): HTMLElement {
	return el("button", { type: "button", class: "link", onclick: () => goTo(place) }, words);
}
