import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { writeClock } from "../../../core/values/clock.ts";
import { el } from "../../dom/el.ts";
import type { Moment } from "../../format/moment.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { PrintOut } from "../../page.ts";
import { portraitPage, uprightTable } from "../../print/portraitPage.ts";
import type { State } from "../../state/store.ts";
import { printedSetting } from "../../state/unitSetting.ts";
import { boilingCautions } from "./boilingCautions.ts";
import { type BoilingRound, boilingRounds } from "./boilingRounds.ts";
import { holdShown } from "./holdShown.ts";

/** The boiling sheet: for each day when to light, boil and have it cool, with room for what was done. */
export const boilingSheetOut: PrintOut = {
	name: say`Print the boiling sheet`,
	pages: (state) => [
		portraitPage(
			state,
			boilingCautions,
			say`Boiled water for the rinse`,
			el("p", { class: "paper-how" }, howWords(state)),
			uprightTable(
				"boiling-lines",
				[
					say`Round`,
					say`Light by`,
					say`Start with, in batches`,
					say`Boil until`,
					say`Cool by`,
					say`Lit at`,
					say`Boiled from–to`,
					say`Cool at, °C`,
					say`Initials`,
				],
				byDay(boilingRounds(state)).map(dayGroup),
			),
		),
	],
};

function howWords(state: State): string {
	const minutes = holdShown(state);
	const below = printedSetting(state, "rinse_below_c");
	const hold =
		minutes === undefined
			? say`Keep each batch at a rolling boil as your protocol says, cover, leave to cool by itself.`
			: say`Keep each batch at a rolling boil for ${shownPlain(minutes)} min, cover, leave to cool by itself.`;
	const rest = say`Rinse when it is ${below.value === undefined ? TO_WRITE : shownPlain(below.value)} °C or cooler. Times are worked out, not measured: look and feel before you trust them.`;
	return [hold, rest, below.why].filter(Boolean).join(" ");
}

function byDay(rounds: readonly BoilingRound[]): BoilingRound[][] {
	const days = [...new Set(rounds.map(({ date }) => date))];
	return days.map((day) => rounds.filter(({ date }) => date === day));
}

function dayGroup(rounds: readonly BoilingRound[]): HTMLElement {
	const [{ date } = { date: "" }] = rounds;
	return el(
		"tbody",
		{},
		el("tr", { class: "day-line" }, el("th", { scope: "rowgroup", colspan: "9" }, shownDay(date))),
		...rounds.map((round) =>
			el(
				"tr",
				{},
				el("th", { scope: "row" }, round.round),
				el("td", { class: "amount" }, moment(round.lightBy, date)),
				el("td", { class: "amount" }, startWords(round)),
				el("td", { class: "amount" }, moment(round.offBoil, date)),
				el("td", { class: "amount" }, moment(round.coolBy, date)),
				...["", "", "", ""].map(() => el("td", { class: "to-write" })),
			),
		),
	);
}

function startWords({ startLitres, batches }: BoilingRound): string {
	if (startLitres === undefined || batches === undefined) return "–";
	const litres = `${shownAs(boilingSheet.columns.start_litres, startLitres)} L`;
	return batches > 1 ? say`${litres} in ${batches}` : litres;
}

/** The time of day, with its day where that is another. */
function moment(at: Moment | undefined, day: string): string {
	if (!at) return "–";
	return at.date === day
		? writeClock(at.minutes)
		: `${writeClock(at.minutes)} ${shownDay(at.date)}`;
}
