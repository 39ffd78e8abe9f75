import type { Act, FireAct, MixAct, RoundAct } from "../../../core/plan/today/act.ts";
import { inTime } from "../../../core/record/kitState.ts";
import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { mixingDaysSheet } from "../../../core/sheets/mixingDays.ts";
import { preparationColumns } from "../../../core/sheets/preparationColumns.ts";
import { runSheetSheet } from "../../../core/sheets/runSheet.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { inPots } from "../../../core/water/inPots.ts";
import { type Child, el } from "../../dom/el.ts";
import { counted, listed } from "../../format/counted.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { hashOf } from "../../shell/hashOf.ts";

/** What an act is told with. */
export interface Surrounding {
	readonly from: LocalTime;
	readonly isNow: boolean;
	/** Kits that wait for a round now. */
	readonly waiting: readonly string[];
}

/** What to do by the clock, in words; the times of the round that runs or comes next are told step by step. */
export function actList(acts: readonly Act[], around: Surrounding): HTMLElement {
	const next = acts.find((act) => act.kind === "round");
	return el(
		"ol",
		{ class: "acts" },
		...acts.flatMap((act, at) => {
			const day = act.at.date;
			const isNewDay = at > 0 && day !== acts[at - 1]?.at.date;
			const heading = (at === 0 ? day !== around.from.date : isNewDay) && dayLine(day);
			return [heading, line(act, around, act === next)];
		}),
	);
}

function dayLine(day: IsoDate): HTMLElement {
	return el("li", { class: "act-day" }, shownDay(day));
}

function line(act: Act, around: Surrounding, isNext: boolean): HTMLElement {
	const isLate = around.isNow && act.kind === "fire" && inTime(act.at, around.from) < 0;
	const runs = around.isNow && act.kind === "round" && inTime(act.at, around.from) <= 0;
	return el(
		"li",
		{ class: `act${isLate ? " late" : ""}${runs ? " runs" : ""}` },
		el("p", { class: "act-time" }, ...time(act, isLate, runs)),
		el("div", { class: "act-words" }, ...words(act, around, isNext)),
	);
}

function time(act: Act, isLate: boolean, runs: boolean): Child[] {
	const strong = (at: LocalTime) => el("strong", {}, writeClock(at.minutes));
	const small = (text: string) => el("span", { class: "unit" }, " ", text);
	if (act.kind === "round")
		return [strong(act.at), "–", strong(act.until), runs && small(say`running now`)];
	if (act.kind === "mix") return [strong(act.until), small(say`at the latest`)];
	return [strong(act.at), small(isLate ? say`late: light it now` : say`at the latest`)];
}

function words(act: Act, around: Surrounding, isNext: boolean): Child[] {
	if (act.kind === "fire") return [fireWords(act)];
	if (act.kind === "mix") return [mixWords(act)];
	return roundWords(act, around, isNext, inTime(act.at, around.from) <= 0);
}

function title(file: string, words: string): HTMLElement {
	return el("a", { href: hashOf(file) }, el("strong", {}, words));
}

function fireWords(act: FireAct): HTMLElement {
	const { round, forDate, litres, fuel, fuelMeasure, pots, onlyIf, pieces } = act;
	const { columns } = boilingSheet;
	const water = shownAs(columns.start_litres, litres);
	const burnt = `${shownAs(columns.fuel_quantity, fuel)} ${fuelMeasure}`;
	const hold = shownPlain(act.holdMinutes);
	const words =
		pieces === "boiling"
			? say`for the pieces of ${round}: ${water} L in pot ${pots}, fuel ${burnt}; ${hold} min from a rolling boil, lid on, every piece under water.`
			: pieces === "steam"
				? say`for the pieces of ${round}: ${water} L under the rack in pot ${pots}, fuel ${burnt}; ${hold} min from when steam comes, lid on.`
				: pots === ""
					? say`for ${round}, ${shownDay(forDate)}: boil ${water} L, fuel ${burnt}; cover and leave to cool.`
					: say`for ${round}, ${shownDay(forDate)}: boil ${water} L ${inPots(pots)}, fuel ${burnt}; cover and leave to cool.`;
	return el(
		"p",
		{},
		title(boilingSheet.file, say`Light the stove`),
		" ",
		onlyIf !== "" && el("strong", {}, say`if ${onlyIf}:`, " "),
		words,
	);
}

function mixWords(act: MixAct): HTMLElement {
	const { round, product, lot } = act;
	const from = lot === "" ? say`going by its label` : say`lot ${lot}`;
	const [water, litres] = [litreWords(act.waterLitres), litreWords(shownLitres(act.litres))];
	const amount = quantityWords(act.quantity, act.measure);
	return el(
		"p",
		{},
		title(mixingDaysSheet.file, say`Mix`),
		" ",
		act.isOfBoiledWater
			? say.safety`for ${round}: ${water} of boiled, cooled water, then ${amount} of ${product}, ${from}. This makes ${litres}. Label it with date, time and discard time.`
			: say.safety`for ${round}: ${water} of cold water, then ${amount} of ${product}, ${from}. This makes ${litres}. Label it with date, time and discard time.`,
	);
}

function shownLitres(litres: number): number {
	return Number(litres.toFixed(preparationColumns.litres.decimals));
}

function roundWords(
	act: RoundAct,
	{ waiting }: Surrounding,
	isNext: boolean,
	runs: boolean,
): Child[] {
	const { round, kits, renew, steps } = act;
	const soak = steps.find(({ isSoak }) => isSoak);
	const last = steps.findLast(({ isSoak }) => isSoak);
	return [
		el(
			"p",
			{},
			title(runSheetSheet.file, round),
			say`: prepare for ${counted(kits, "kit")}.`,
			" ",
			isNext ? whoWaits(waiting) : say`Only if a kit waits.`,
			renew !== "" && ` ${say`Renew ${renew}, if still unused.`}`,
		),
		soak &&
			last &&
			el(
				"p",
				{ class: "act-soak" },
				say.safety`Soak in at ${writeClock(soak.from.minutes)}; out at ${writeClock(last.until.minutes)}, not before.`,
			),
		isNext &&
			(runs || waiting.length > 0 || renew !== "") &&
			el(
				"ol",
				{ class: "act-steps" },
				...steps.map(({ step, from, until }) =>
					el(
						"li",
						{},
						el(
							"span",
							{ class: "act-step-time" },
							`${writeClock(from.minutes)}–${writeClock(until.minutes)}`,
						),
						" ",
						step,
					),
				),
			),
	];
}

function whoWaits(waiting: readonly string[]): string {
	if (waiting.length === 0) return say`No kit waits now: only if one comes.`;
	if (waiting.length === 1) return say`Kit ${waiting[0]} waits.`;
	return say`Kits ${listed(waiting)} wait.`;
}
