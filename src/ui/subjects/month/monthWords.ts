import { valueIn } from "../../../core/outcome.ts";
import { roundsOfRecord } from "../../../core/plan/kits/kitRecord.ts";
import { pieceRounds } from "../../../core/plan/kits/pieceRounds.ts";
import { birthsCalibration } from "../../../core/plan/record/birthsCalibration.ts";
import { ofHundred } from "../../../core/plan/record/calibration.ts";
import { failuresOverDays } from "../../../core/plan/record/failuresOverDays.ts";
import { hoursDone } from "../../../core/plan/record/hoursPlanned.ts";
import { kitsUsedOn } from "../../../core/plan/record/kitsUsedByDay.ts";
import { needsShare } from "../../../core/plan/record/needsShare.ts";
import { type RoundBelow, roundsOverDays } from "../../../core/plan/record/roundsOverDays.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { counted, listed } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import { needsAnswer } from "./needsAnswer.ts";

/** No more names in a line than can be read. */
const MOST_NAMED = 6;

/**
 * What the record says of some days, in sentences.
 *
 * @param all also what the pictures answer, where they do not stand beside it
 */
export function monthWords(read: ReadWorkbook, days: readonly IsoDate[], all: boolean): string[] {
	return [
		sharePart(read, days),
		all ? needsAnswer(needsShare(read, days)) : "",
		...roundsPart(read, days),
		hoursPart(read, days),
		all ? failedPart(read, days) : "",
		piecesPart(read),
		calibrationPart(read),
	].filter(Boolean);
}

/** People's hours in the rounds done; nothing where no round has an end. */
function hoursPart(read: ReadWorkbook, days: readonly IsoDate[]): string {
	const done = hoursDone(read, days);
	if (!done || done.timed === 0) return "";
	const { hours, timed, rounds } = done;
	return say`People's hours in rounds, waiting included: ${shownNumber(hours, 1)}, by the ${timed} of ${rounds} rounds that have an end written down and the people that a round has by the settings. How long fires burnt is not written down.`;
}

/** Kits used per 100 births, of the days on which both are known. */
function sharePart(read: ReadWorkbook, days: readonly IsoDate[]): string {
	const { tables, settings } = read;
	const known = kitsUsedOn(read, days);
	let births = 0;
	let kits = 0;
	for (const { value } of tables.records.rows) {
		const used = known.get(value.date);
		if (value.births === null || used === undefined) continue;
		births += value.births;
		kits += used;
	}
	if (births === 0) return say`Kits used per 100 births: no day has both births and kits used.`;
	const planned = valueIn(settings.kits_used_per_100_births);
	const found = say`Kits used per 100 births: ${shownNumber((100 * kits) / births, 1)}, from ${counted(kits, "kit")} at ${counted(births, "birth")} on days that have both.`;
	return planned === undefined ? found : say`${found} The settings say ${shownPlain(planned)}.`;
}

function roundsPart(read: ReadWorkbook, days: readonly IsoDate[]): string[] {
	const { leftOut, shortSoaks, weakReadings } = roundsOverDays(read, days);
	const soak = valueIn(read.settings.soak_minutes);
	const target = valueIn(read.settings.target_strength_pct);
	return [
		leftOut === undefined
			? say`No round is written down, so none can be said to be left out.`
			: leftOut.length === 0
				? say`Every day on which a kit waited had a round.`
				: say`A kit waited and no round is written down on: ${listed(leftOut.map(shownDay), MOST_NAMED)}.`,
		!shortSoaks || shortSoaks.length === 0 || soak === undefined
			? ""
			: say`Soaks shorter than ${shownPlain(soak)} min: ${below(shortSoaks, (minutes) => say`${minutes} min`)}. Kits from too short a soak go through a round again before they are used.`,
		!weakReadings || weakReadings.length === 0 || target === undefined
			? ""
			: say`Readings under ${shownPlain(target)} %: ${below(weakReadings, (pct) => say`${shownPlain(pct)} %`)}. A strip may be off by up to about half; see whether the lot has lost strength.`,
	];
}

function below(rounds: readonly RoundBelow[], shown: (found: number) => string): string {
	return listed(
		rounds.map(
			({ date, start, found }) => say`${shownDay(date)}, ${writeClock(start)} (${shown(found)})`,
		),
		MOST_NAMED,
	);
}

function failedPart({ tables }: ReadWorkbook, days: readonly IsoDate[]): string {
	const { byFinding, byKit } = failuresOverDays(tables, days);
	if (byFinding.length === 0) return "";
	const named = (list: typeof byKit) =>
		listed(
			list.map(({ name, times }) => (times === 1 ? name : say`${name} (${times} times)`)),
			MOST_NAMED,
		);
	return say`Failed checks, by what was found: ${named(byFinding)}; by kit: ${named(byKit)}.`;
}

/** How far the pieces that have a limit have come, by all rounds on record before the plan. */
function piecesPart(read: ReadWorkbook): string {
	const firstDay = valueIn(read.settings.plan_start);
	if (firstDay === undefined) return "";
	// When a round ended does not matter here.
	const pieces = pieceRounds(
		read,
		roundsOfRecord(read, () => 0),
		firstDay,
	);
	if (pieces.length === 0) return "";
	const named = pieces.map(
		({ kit, row, rounds, limit, since }) =>
			say`${row.value.piece} of kit ${kit}: ${rounds} of ${limit} since ${shownDay(since)}`,
	);
	return say`Rounds of the pieces that have a limit: ${listed(named, MOST_NAMED)}.`;
}

/** Of all past days, whatever the span: a month alone says little. */
function calibrationPart(read: ReadWorkbook): string {
	const found = birthsCalibration(read);
	if (!found)
		return say`Whether the plans set enough aside cannot be said yet: no past day is both planned and recorded.`;
	const { days, enough, asked, between } = found;
	const [low, high] = [between.low, between.high].map((end) => shownPlain(ofHundred(end)));
	return say`Of all ${days} past days that were planned and recorded, the births prepared for were enough on ${enough}: between ${low} and ${high} of 100 days in the long run, and the plan asks for ${shownPlain(100 * asked)}.`;
}
