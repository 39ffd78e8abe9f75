import { isUnreviewed } from "../../core/language.ts";
import { BESIDE } from "../../core/say.ts";

const AMOUNT = /([\d.,\u202f–]{0,20}\d (?:%|°C|mg\/L|g\/L|mL|L|mg|kg|g|h|min)(?![\p{L}\d/]))/u;
/** Elements that take text alone, or give each child a place of its own. */
const OF_ONE_TEXT = new Set(["OPTION", "LABEL", "BUTTON", "SUMMARY"]);

/**
 * A text as it stands in an element: English beside the words of another language is told
 * apart for who hears the page, and a number and its unit never part at the end of a line.
 * The space between them stays a plain one, so that what is copied is what was written.
 */
export function wordsOf(text: string, { tagName }: Element): (Node | string)[] {
	if (OF_ONE_TEXT.has(tagName)) return inLanguages(text, (words) => [words]);
	return inLanguages(text, inAmounts);
}

function inLanguages(text: string, inParts: typeof inAmounts): (Node | string)[] {
	const [own = "", ...english] = isUnreviewed ? text.split(BESIDE) : [text];
	return [
		...inParts(own),
		...english.flatMap((words) => [BESIDE, span("lang", "en", ...inParts(words))]),
	];
}

function inAmounts(text: string): (Node | string)[] {
	const parts = text.split(AMOUNT);
	return parts.length === 1
		? parts
		: parts
				.map((part, at) => (at % 2 === 1 ? span("class", "unparted", part) : part))
				.filter((part) => part !== "");
}

function span(name: string, value: string, ...children: (Node | string)[]): HTMLElement {
	const element = document.createElement("span");
	element.setAttribute(name, value);
	element.append(...children);
	return element;
}
