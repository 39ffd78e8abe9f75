import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import type { Moment } from "../../format/moment.ts";
import { shownDay, shownWeekday } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printedFoot } from "../../print/printedHead.ts";
import { uprightTable } from "../../print/uprightTable.ts";
import type { State } from "../../state/store.ts";
import { printedSetting } from "../../state/unitSetting.ts";
import { boilingCautions } from "./boilingCautions.ts";
import { type BoilingRound, boilingRounds } from "./boilingRounds.ts";
import { holdShown } from "./holdShown.ts";

/** The boiling sheet: every fire under the day on which it is lit, when it boils and is cool, with room for what was done. */
export const boilingSheetOut: PrintOut = {
	name: say`Print the boiling sheet`,
	pages: (state) => [
		paperForm(
			state,
			"boiling-sheet",
			{ title: say`Boiled water and fires`, cautions: boilingCautions, end: printedFoot() },
			el("p", { class: "paper-how" }, howWords(state)),
			uprightTable(
				"boiling-lines",
				[
					say`Light by`,
					say`For`,
					say`Start with, in batches`,
					say`Pots`,
					say`Boil until`,
					say`Cool by`,
					say`Lit at`,
					say`Boiled from–to`,
					say`Cool at, °C`,
					say`Initials`,
				],
				byDay(boilingRounds(state)).map(([day, fires]) => dayGroup(day, fires)),
			),
		),
	],
};

function howWords(state: State): string {
	const minutes = holdShown(state);
	const below = printedSetting(state, "rinse_below_c");
	const hold =
		minutes === undefined
			? say.safety`Keep each batch at a rolling boil as your protocol says, cover, leave to cool by itself.`
			: say.safety`Keep each batch at a rolling boil for ${shownPlain(minutes)} min, cover, leave to cool by itself.`;
	const rest = say.safety`Rinse when it is ${below.value === undefined ? TO_WRITE : shownPlain(below.value)} °C or cooler. Times are worked out, not measured: look and feel before you trust them.`;
	const hours = printedSetting(state, "boiled_water_hours");
	const discard = say.safety`Label it with the time of the boil; discard it ${hours.value === undefined ? TO_WRITE : shownPlain(hours.value)} h after the boil.`;
	const lines = boilingRounds(state);
	const first = lines.find((line) => line.pieces === "");
	const pieces = lines.some((line) => line.pieces !== "")
		? say.safety`Pieces that are boiled or steamed: only if the round runs; each line has its time, from a rolling boil or from when steam comes. Nothing is added once it has begun.`
		: "";
	if (!first) return pieces;
	const condition = first.onlyIf ? say.safety`A fire is lit only if: ${first.onlyIf}.` : "";
	return [condition, hold, rest, discard, pieces, below.why, hours.why].filter(Boolean).join(" ");
}

/** Fires under the day on which they are lit; a round without one under its own. */
function byDay(fires: readonly BoilingRound[]): [day: IsoDate, fires: BoilingRound[]][] {
	const dayOf = ({ lightBy, date }: BoilingRound) => lightBy?.date ?? date;
	const days = [...new Set(fires.map(dayOf))];
	return days.map((day) => [day, fires.filter((fire) => dayOf(fire) === day)]);
}

function dayGroup(day: IsoDate, fires: readonly BoilingRound[]): HTMLElement {
	return el(
		"tbody",
		{},
		el("tr", { class: "day-line" }, el("th", { scope: "rowgroup", colspan: "10" }, shownDay(day))),
		...fires.map((fire) =>
			el(
				"tr",
				{},
				el("th", { scope: "row", class: "amount" }, moment(fire.lightBy, day)),
				el("td", { class: "for-round" }, forWords(fire, day), pieceWords(fire)),
				el("td", { class: "amount" }, startWords(fire)),
				el("td", { class: "amount" }, fire.pots || "–"),
				el("td", { class: "amount" }, moment(fire.offBoil, day)),
				el("td", { class: "amount" }, moment(fire.coolBy, day)),
				...["", "", "", ""].map(() => el("td", { class: "to-write" })),
			),
		),
	);
}

/** The round, with its day where that is another. */
function forWords({ round, date }: BoilingRound, day: IsoDate): string {
	return date === day ? round : `${round}, ${shownWeekday(date)}`;
}

/** How long pieces are held. */
function pieceWords({ pieces, holdMinutes }: BoilingRound): string | false {
	if (pieces === "") return false;
	const minutes = holdMinutes === undefined ? TO_WRITE : shownPlain(holdMinutes);
	return pieces === "steam"
		? say`: pieces, ${minutes} min in steam`
		: say`: pieces, ${minutes} min at the boil`;
}

function startWords({ startLitres, batches }: BoilingRound): string {
	if (startLitres === undefined || batches === undefined) return "–";
	const litres = say`${shownAs(boilingSheet.columns.start_litres, startLitres)} L`;
	return batches > 1 ? say`${litres} in ${batches}` : litres;
}

/** The time of day, with its day where that is another. */
function moment(at: Moment | undefined, day: string): string {
	if (!at) return "–";
	return at.date === day
		? writeClock(at.minutes)
		: `${writeClock(at.minutes)} ${shownWeekday(at.date)}`;
}
