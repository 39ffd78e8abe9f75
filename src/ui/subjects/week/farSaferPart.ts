import { say } from "../../../core/say.ts";
import { howSafeSheet } from "../../../core/sheets/howSafe.ts";
import { afterPaint } from "../../dom/afterPaint.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { capital } from "../../format/capital.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownNumber, twoDigits } from "../../format/shownNumber.ts";
import { shownOf100 } from "../../format/shownOf100.ts";
import { hashOf } from "../../shell/hashOf.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type FarSafer, farSafer } from "./farSafer.ts";

const MOST_SHOWN = 5;
const { columns } = howSafeSheet;

/** Stays as a person left it when the plan is made anew. */
let isOpen = false;

/** What is far safer than asked, what that costs and what would change it; worked out when it is unfolded. */
export function farSaferPart(state: State): HTMLElement {
	const inside = el("div", {});
	const part = el(
		"details",
		{ class: "far-safer", open: isOpen },
		el("summary", {}, say`What is far safer than asked, and what that costs`),
		inside,
	);
	const unfold = () => {
		isOpen = part.open;
		// The plan itself is on the screen first.
		if (isOpen && !inside.firstChild) afterPaint(() => fill(inside, ...content(state)));
	};
	part.addEventListener("toggle", unfold);
	unfold();
	return part;
}

function content(state: State): Child[] {
	const far = farSafer(state);
	const sheet = el("a", { href: hashOf(howSafeSheet.file) }, howSafeSheet.title);
	if (far.length === 0)
		return [el("p", {}, say`Nothing is far safer than asked.`), el("p", {}, sheet)];
	return [
		el(
			"p",
			{},
			say`Rounds, loads, baths, kits and packs come whole. These fall short at most a fifth as often as was asked (a rule of this program). That is no mistake; it costs something, and you may want it otherwise.`,
		),
		el("ul", {}, ...far.slice(0, MOST_SHOWN).map((one) => line(state, one))),
		el("p", {}, far.length > MOST_SHOWN && say`More on the sheet:`, " ", sheet),
	];
}

function line(state: State, one: FarSafer): HTMLElement {
	const { row } = one;
	const lever = wordIn(row.lever);
	return el(
		"li",
		{},
		el("strong", {}, name(one)),
		` ${numbers(one)} ${cost(state, one)}`,
		lever !== "" && el("span", { class: "lever" }, lever),
	);
}

function name({ row, days, ofDays }: FarSafer): string {
	const what = capital(shownWord(wordIn(row.promise)));
	const of = wordIn(row.of);
	if (of !== "") return say`${what}, ${of}:`;
	if (wordIn(row.promise) === "kits_needed") return say`${what}:`;
	if (ofDays === 0) return say`${what}, the whole plan:`;
	return days === ofDays ? say`${what}, each day:` : say`${what}, ${days} of ${ofDays} days:`;
}

function numbers({ row }: FarSafer): string {
	if (wordIn(row.promise) === "kits_needed") return kits(row);
	const unit = shownWord(wordIn(row.unit));
	const setAside = `${shownAs(columns.set_aside, numberIn(row.set_aside) ?? 0)} ${unit}`;
	const [asked, enough] = [row.asked_of_100, row.enough_of_100].map((figure) =>
		shownOf100((numberIn(figure) ?? 0) / 100),
	);
	const expected = shownAs(columns.expected, numberIn(row.expected) ?? 0);
	return say`Prepare for ${setAside}, average ${expected}; enough on ${enough} of 100, where ${asked} were asked.`;
}

/** Kits are asked for by how many of 1,000 needs may find none ready. */
function kits({ set_aside, asked_of_100, enough_of_100 }: FarSafer["row"]): string {
	const [asked, kept] = [asked_of_100, enough_of_100].map((figure) =>
		twoDigits(10 * (100 - (numberIn(figure) ?? 0))),
	);
	return say`with ${numberIn(set_aside) ?? 0}, ${kept} of 1\u202f000 times no kit is ready when needed, where ${asked} would be accepted.`;
}

function cost(state: State, { row }: FarSafer): string {
	const price = numberIn(row.cost);
	if (price === undefined) return "";
	const money = `${shownNumber(price, 2)} ${unitSetting(state, "currency") ?? ""}`.trim();
	return say`What is beyond that is worth ${money}.`;
}
