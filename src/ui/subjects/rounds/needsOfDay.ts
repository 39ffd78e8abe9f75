import { valueIn } from "../../../core/outcome.ts";
import { gauzeOfRound } from "../../../core/plan/rounds/gauzeOfRound.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import type { MixAct } from "../../../core/plan/today/act.ts";
import { mixActs } from "../../../core/plan/today/mixActs.ts";
import { roundActs } from "../../../core/plan/today/roundActs.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { momentAt } from "../../../core/record/momentAt.ts";
import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { runSheetSheet } from "../../../core/sheets/runSheet.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { counted } from "../../format/counted.ts";
import { litreWords, quantityWords } from "../../format/litreWords.ts";
import { momentOf } from "../../format/moment.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import type { ShownRound } from "./dayRounds.ts";

/**
 * What the rounds of a day need, so that one paper is enough: what all of them need said once, the
 * rest under the name of each.
 *
 * @returns lines of sentences; each stays a text of its own, because one may have its English beside it
 */
export function needsOfDay(state: State, day: IsoDate, rounds: readonly ShownRound[]): string[][] {
	const needs = roundNeeds(state, day);
	const each = rounds.map((round) => ({ name: round.name, words: needs(round) }));
	if (each.length === 1) return each.map(({ words }) => words).filter(({ length }) => length > 0);
	const common = (each[0]?.words ?? []).filter((sentence) =>
		each.every(({ words }) => words.includes(sentence)),
	);
	const own = each.map(({ name, words }) => ({
		name,
		words: words.filter((sentence) => !common.includes(sentence)),
	}));
	return [
		...(common.length > 0 ? [[say`For each round:`, ...common]] : []),
		...own
			.filter(({ words }) => words.length > 0)
			.map(({ name, words }) => [say`${name}:`, ...words]),
	];
}

/**
 * What a round needs at the bench, a sentence each, so that its one paper is enough: solution,
 * boiled water, gauze, kits to renew. What is not known leaves room to write it.
 */
function roundNeeds(state: State, day: IsoDate): (round: ShownRound) => string[] {
	const read = readWorkbook(state.workbook);
	const mixes = mixActs(state.plan, read.settings, roundActs(state.plan, read));
	const fires = rowsOf(state.plan, boilingSheet).filter(({ date }) => wordIn(date) === day);
	const boiling = fires.filter(({ pieces }) => wordIn(pieces) === "");
	const loads = fires.filter(({ pieces }) => wordIn(pieces) !== "");
	const renewed = rowsOf(state.plan, runSheetSheet).filter(
		({ date, renew }) => wordIn(date) === day && wordIn(renew) !== "",
	);
	const { rinse_buckets, bucket_fill_litres } = read.settings;
	const [perSoak, fill] = [valueIn(rinse_buckets), valueIn(bucket_fill_litres)];
	return (round) => {
		const [first] = round.steps;
		if (!first) return [];
		const at = momentAt(day, first.startsAt);
		const mix = mixes.find((each) => each.at.date === at.date && each.at.minutes === at.minutes);
		const soaks = round.steps.filter(({ sort }) => sort === "soak").length;
		const litres = boiling
			.filter((row) => wordIn(row.round) === round.name)
			.map((row) => numberIn(row.litres));
		const gauze = gauzeOfRound(read, {
			kits: round.kits,
			loads: round.steps.filter(({ sort }) => sort === "soak" || sort === "hold").length,
			descalings: round.steps.filter(({ sort }) => sort === "descale").length,
		});
		const renew = renewed.find((row) => wordIn(row.round) === round.name);
		return [
			round.onlyIf === "" ? "" : say`Only if ${round.onlyIf}.`,
			soaks > 0 ? solutionWords(mix, mixes.length > 0) : "",
			waterWords(litres, perSoak === undefined ? undefined : soaks * perSoak, fill),
			...pieceWords(loads.filter((row) => wordIn(row.round) === round.name)),
			say`Gauze: ${gauze === undefined ? TO_WRITE : counted(gauze, "piece")}.`,
			renew ? say`Renew if still unused: ${wordIn(renew.renew)}.` : "",
		].filter((words) => words !== "");
	};
}

/** @param anyMade whether some round of the plan has a mix; then a round without one takes the solution of the day */
function solutionWords(mix: MixAct | undefined, anyMade: boolean): string {
	if (!mix)
		return anyMade
			? say.safety`Solution: the one made earlier today; look at its discard time.`
			: say.safety`Solution: ${TO_WRITE} L of water, then ${TO_WRITE} of product, to the mark of ${TO_WRITE} L.`;
	const product = mix.lot === "" ? mix.product : say`${mix.product}, lot ${mix.lot}`;
	const [water, litres] = [litreWords(mix.waterLitres), litreWords(mix.litres)];
	const amount = quantityWords(mix.quantity, mix.measure);
	return mix.isOfBoiledWater
		? say.safety`Solution: ${water} of boiled, cooled water, then ${amount} of ${product}, to the mark of ${litres}.`
		: say.safety`Solution: ${water} of water, then ${amount} of ${product}, to the mark of ${litres}.`;
}

/** What is lit for pieces, a sentence for each load. */
function pieceWords(loads: ReturnType<typeof rowsOf<typeof boilingSheet>>): string[] {
	return loads.map((row) => {
		const [start, hold] = [numberIn(row.start_litres), numberIn(row.hold_minutes)];
		const litres =
			start === undefined ? TO_WRITE : shownAs(boilingSheet.columns.start_litres, start);
		const minutes = hold === undefined ? TO_WRITE : shownPlain(hold);
		const at = momentOf(wordIn(row.light_by));
		const by = at ? writeClock(at.minutes) : TO_WRITE;
		return wordIn(row.pieces) === "steam"
			? say`Light the stove by ${by}, ${litres} L under the rack; pieces ${minutes} min in steam.`
			: say`Light the stove by ${by}, ${litres} L in a pot; pieces ${minutes} min at a rolling boil.`;
	});
}

/** What is left over beside the rinse buckets is for the solution. */
function waterWords(
	litres: readonly (number | undefined)[],
	buckets: number | undefined,
	fill: number | undefined,
): string {
	if (litres.length === 0) return "";
	const known = litres.flatMap((each) => each ?? []);
	if (known.length < litres.length) return say`Boiled, cooled water: ${TO_WRITE} L.`;
	const all = known.reduce((sum, each) => sum + each, 0);
	if (buckets === undefined || fill === undefined)
		return say`Boiled, cooled water: ${litreWords(all)}.`;
	const [each, rest] = [litreWords(fill), all - buckets * fill];
	return rest < 1e-9
		? say`Boiled, cooled water: ${litreWords(all)} (rinse buckets: ${buckets} × ${each}).`
		: say`Boiled, cooled water: ${litreWords(all)} (rinse buckets: ${buckets} × ${each}; for the solution: ${litreWords(rest)}).`;
}
