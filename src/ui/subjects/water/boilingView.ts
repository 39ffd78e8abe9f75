import { notInTimeCodes } from "../../../core/plan/water/waterNotInTime.ts";
import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { sources } from "../../../core/sources.ts";
import { STANDARD_POT_LITRES } from "../../../core/water/coolingMinutes.ts";
import { inPots } from "../../../core/water/inPots.ts";
import { type Child, el } from "../../dom/el.ts";
import { pictureFigure, pictureWidth } from "../../dom/pictureFigure.ts";
import { withinSentence } from "../../dom/withinSentence.ts";
import { counted } from "../../format/counted.ts";
import { shownBefore } from "../../format/moment.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownMinutes } from "../../format/shownMinutes.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { sourceWords } from "../../sheet/sourceWords.ts";
import { hashOf } from "../../shell/hashOf.ts";
import { reprocessesAfterEachUse } from "../../state/reprocessesAfterEachUse.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { waysOf } from "../../state/waysOf.ts";
import { boilingRounds } from "./boilingRounds.ts";
import { type Cooling, coolingOf } from "./coolingOf.ts";
import { hearthBars } from "./hearthBars.ts";
import { holdShown } from "./holdShown.ts";
import { pieceFireWords } from "./pieceFireWords.ts";

/** When to light the next fire, stove and pots through a day, how the water cools, and the rule on boiling with its disagreement. */
export function boilingView(state: State, room: number): HTMLElement | undefined {
	const pieces = pieceFireWords(state);
	const { treated } = waysOf(state);
	const isRinsed = treated.size === 0 || treated.has("chlorine");
	const cooling = isRinsed ? coolingOf(state) : undefined;
	const next = nextFireWords(state);
	const bars = hearthBars(state);
	if (isRinsed && pieces.length === 0) {
		if (reprocessesAfterEachUse(state)) return afterEachUse(state);
		if (!cooling && next === undefined) return undefined;
	}
	const late = state.plan.problems.filter(({ code }) => notInTimeCodes.includes(code));
	return el(
		"section",
		{ class: "boil" },
		next !== undefined && el("p", { class: "next" }, next),
		!isRinsed && el("p", {}, say`No piece goes into chlorine, so no water is boiled for rinsing.`),
		...pieces.map((words) => el("p", {}, words)),
		...late.map(({ message }) => el("p", { class: "reason" }, message)),
		isRinsed && policyWords(state),
		bars.length > 0 &&
			pictureFigure(
				({ hearthPicture }) => hearthPicture(bars, pictureWidth(room)),
				say`Stove and pots through the first day, from the evening before.`,
				isRinsed
					? say`Solid: the stove burns. Outlined: a pot is taken, from filling until its water is cool, for the round named in it. Then the water is used, or poured into a disinfected, covered vessel.`
					: say`Solid: the stove burns. Outlined: a pot is taken, from lighting the stove until the time of its pieces is over, for the round named in it.`,
				...(isRinsed && pieces.length > 0
					? [
							say`A pot in which pieces are boiled, or over which they are steamed, is taken until their time is over.`,
						]
					: []),
			),
		cooling &&
			pictureFigure(
				({ coolingPicture }) =>
					coolingPicture(cooling.pot, cooling.wantedC, cooling.minutes, pictureWidth(room)),
				say`Temperature of the boiled water as it cools, hour by hour.`,
				...coolingWords(cooling),
			),
		isRinsed && holdWords(state),
	);
}

function nextFireWords(state: State): string | undefined {
	const [next] = boilingRounds(state);
	if (!next) return undefined;
	const { date, round, lightBy, startLitres, batches, holdMinutes, pots, waitsFor } = next;
	const name = `${round}, ${shownDay(date)}`;
	const { pieces } = next;
	if (!lightBy || startLitres === undefined || batches === undefined || holdMinutes === undefined)
		return say`Next fire (for ${name}): no time to light the stove yet. ${waitsFor}`.trim();
	if (pieces !== "") {
		const litres = shownAs(boilingSheet.columns.start_litres, startLitres);
		const [by, hold] = [shownBefore(lightBy, date), shownPlain(holdMinutes)];
		return pieces === "steam"
			? say`Next fire (for ${name}, only if the round runs): light the stove by ${by}, ${litres} L under the rack in pot ${pots}; keep the pieces in steam for ${hold} min from when it comes.`
			: say`Next fire (for ${name}, only if the round runs): light the stove by ${by}, ${litres} L in pot ${pots}; keep the pieces at a rolling boil for ${hold} min.`;
	}
	return say`Next fire (for ${name}): light the stove by ${shownBefore(lightBy, date)}. Start with ${shownAs(boilingSheet.columns.start_litres, startLitres)} L in ${counted(batches, "batch")}, ${inPots(pots)}; keep each at a rolling boil for ${shownPlain(holdMinutes)} min, then cover and leave to cool.`;
}

/** Without rounds no fire has its hour. */
function afterEachUse(state: State): HTMLElement {
	return el(
		"section",
		{ class: "boil" },
		el(
			"p",
			{},
			unitSetting(state, "boil_for") === "after_use"
				? say`Kits are reprocessed after each use, and the fire is lit once a kit waits: light it at once, the kit waits until its water is cool.`
				: say`Kits are reprocessed after each use: cooled, covered, labelled water for the next kit stands ready, and is boiled again as soon as it was used or is too old.`,
		),
		holdWords(state),
	);
}

/** When this unit boils, in words, and where that is changed. */
function policyWords(state: State): HTMLElement {
	const chosen = unitSetting(state, "boil_for");
	const words =
		chosen === "standing"
			? say`A fire is lit only if the water that stood ready was used or is too old.`
			: chosen === "after_use"
				? say`A fire is lit only once a used kit waits; a kit used too late for its water waits for the next round.`
				: say`The water of each round is boiled whether or not the round runs.`;
	return el(
		"p",
		{},
		words,
		" ",
		...withinSentence(
			(link) => say`When water is boiled is set in ${link}.`,
			el("a", { href: hashOf(unitSheet.file) }, say`the settings`),
		),
	);
}

function coolingWords({ pot, wantedC, minutes, rateFrom }: Cooling): Child[] {
	const whose = {
		reading: say`from your own two readings of a pot`,
		typed: say`as entered in the settings`,
		default: say`an estimate to be replaced by your own readings`,
	}[rateFrom];
	const pots = withinSentence(
		(link) =>
			say`A closed pot that stands in cold water cools faster; how much is your own to measure: read its temperature twice, enter both under ${link}, and the plan goes by that. Never put ice or untreated water into boiled water.`,
		el("a", { href: hashOf(unitSheet.file) }, say`settings, Your pot`),
	);
	return [
		minutes === undefined
			? say`In a room of ${pot.roomC} °C the water never cools to ${wantedC} °C by itself.`
			: minutes === 0
				? say`The water is cool enough as it boils: ${wantedC} °C is allowed.`
				: say`A covered pot of ${shownPlain(pot.potLitres)} L takes ${shownMinutes(minutes)} to cool from the boil to ${wantedC} °C in a room of ${pot.roomC} °C.`,
		" ",
		say`Cooling rate of a ${STANDARD_POT_LITRES} L pot: ${shownPlain(Number(pot.coolingPerHour.toPrecision(3)))} per hour, ${whose}.`,
		" ",
		...pots,
	];
}

/** The rule on boiling, what each body says, and what this unit does. */
function holdWords(state: State): HTMLElement {
	const minutes = holdShown(state);
	const altitude = unitSetting(state, "altitude_m");
	return el(
		"p",
		{ class: "hold source" },
		el(
			"strong",
			{},
			minutes === undefined
				? say`How long to keep it at the boil is not settled here.`
				: altitude === undefined
					? say`This unit keeps it at the boil for ${shownPlain(minutes)} min.`
					: say`This unit keeps it at the boil for ${shownPlain(minutes)} min, at ${shownPlain(altitude)} m above the sea.`,
		),
		" ",
		...withinSentence(
			(link) => say`Your national protocol decides; ${link}.`,
			el("a", { href: hashOf(unitSheet.file) }, say`change it in the settings`),
		),
		" ",
		...sourceWords(sources.boilHold),
	);
}
