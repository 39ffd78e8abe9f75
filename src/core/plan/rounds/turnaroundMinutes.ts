import { calculation } from "../../calculation.ts";
import { confidenceInput } from "../../counts/setAsideOf.ts";
import { setAsideOfSome } from "../../counts/setAsideOfSome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { Refusal, type RefusalWords } from "../../refusal.ts";
import { minutesOf, type RoundLength } from "../../rounds/roundLength.ts";
import { oneRound, type RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { kitsOfRound } from "../../rounds/roundsThatRun.ts";
import { roundWithMostKits } from "../../rounds/roundWithMostKits.ts";
import { say } from "../../say.ts";
import { type RoundsRow, roundsSheet } from "../../sheets/rounds.ts";
import { commonPractice } from "../../source.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";

/** Minutes from each round's start to the next one's, the last round's to the first of the next day. */
export function gapsBetween(starts: readonly number[]): number[] {
	return starts.map(
		(start, i) => (starts[i + 1] ?? (starts[0] as number) + MINUTES_PER_DAY) - start,
	);
}

interface KitsInputs {
	readonly days: readonly RoundsOfDay[];
	readonly confidence: number;
	readonly kitsInService: number;
}

/**
 * Kits in the fullest round the plan is made for: what is set aside for the round that
 * brings most kits, given that it runs; at most the kits in service, at least one.
 */
export const kitsOfFullestRound = calculation<KitsInputs, number>({
	key: "kits_of_fullest_round",
	label: say`Kits in the fullest round, prepare for`,
	unit: say`kits`,
	formula: say`Of all rounds, the one that brings most kits on average, hours of the day counted: the smallest number that is enough, as surely as the plan asks, when it runs; at most the kits in service, at least one.`,
	source: commonPractice,
	inputs: {
		days: { label: say`Kits in each round, average`, unit: say`kits` },
		confidence: confidenceInput,
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
	},
	example: {
		// What comes in over the night, a mean of 3 kits, is in the first round: 6 are enough for 95 of 100.
		inputs: {
			days: [
				{
					kind: "in_rounds",
					starts: [420, 840, 1260],
					kits: [3, 2.1, 2.1],
					byKind: [[3, 2.1, 2.1]],
				},
			],
			confidence: 0.95,
			kitsInService: 10,
		},
		result: 6,
		within: 0,
	},
	compute: (kits) => {
		const round = roundWithMostKits(kits.days);
		return round < roundsIn(kits.days) ? kitsOfOneRound(kits, round) : 1;
	},
});

/** What is set aside for each round of the day when it runs, on the day on which it brings most: at least one kit, at most those in service. */
export function kitsOfEachRound(kits: KitsInputs): number[] {
	return Array.from({ length: roundsIn(kits.days) }, (_, i) => kitsOfOneRound(kits, i));
}

function roundsIn(days: readonly RoundsOfDay[]): number {
	return Math.max(0, ...inRoundsOnly(days).map(({ kits }) => kits.length));
}

function kitsOfOneRound({ days, confidence, kitsInService }: KitsInputs, round: number): number {
	let most = 1;
	for (const day of inRoundsOnly(days))
		most = Math.max(most, setAsideOfSome(kitsOfRound(day, round), confidence));
	return Math.max(1, Math.min(most, kitsInService));
}

/** Each day once, however many are alike. */
function inRoundsOnly(days: readonly RoundsOfDay[]): readonly RoundsOfDay[] {
	return [...new Set(days)].filter(({ kind }) => kind === "in_rounds");
}

interface FitInputs extends KitsInputs {
	readonly minutes: number;
	readonly length: RoundLength;
	readonly rounds: readonly GoodRow<RoundsRow>[];
}

/** From the start of the fullest round to its kits being ready; every round must end before the next begins. */
export const turnaroundMinutes = calculation<FitInputs, number>({
	key: "turnaround_minutes",
	label: say`Minutes until the kits of a round are ready`,
	unit: "min",
	formula: say`Minutes of the fullest round. Every round, with the kits it prepares for, must end before the next round begins.`,
	source: commonPractice,
	inputs: {
		minutes: { label: say`Minutes of the fullest round`, unit: "min", min: 0 },
		length: { label: say`What makes a round long`, unit: "min" },
		rounds: { label: say`Rounds of the day`, unit: "" },
		days: { label: say`Kits in each round, average`, unit: say`kits` },
		confidence: confidenceInput,
		kitsInService: { label: say`Kits in service`, unit: say`kits`, min: 0 },
	},
	example: {
		inputs: {
			minutes: 110,
			length: { perRound: 50, perKit: 10, loads: [] },
			rounds: [{ line: 2, value: { start: 420, label: "" } }],
			days: [oneRound(3)],
			confidence: 0.95,
			kitsInService: 10,
		},
		result: 110,
		within: 0,
	},
	compute: ({ minutes, length, rounds, ...kits }) => {
		const late = lateRounds(rounds, length, kitsOfEachRound(kits));
		return late.length > 0 ? new Refusal(late) : minutes;
	},
});

/** The rounds that have not ended when the next one begins. @param kits in each of them */
export function lateRounds(
	rounds: readonly GoodRow<RoundsRow>[],
	length: RoundLength,
	kits: readonly number[],
): RefusalWords[] {
	const gaps = gapsBetween(rounds.map((round) => round.value.start));
	return rounds.flatMap((round, i) => {
		const needs = minutesOf(length, kits[i] ?? 1);
		return needs > (gaps[i] as number) ? [tooLong(round, needs, gaps[i] as number)] : [];
	});
}

/** Code of a round that has not ended when the next one begins. */
export const TOO_LONG = "round-too-long";

/** A round that has not ended when the next one begins. */
export function tooLong(
	{ value, line }: GoodRow<RoundsRow>,
	needs: number,
	has: number,
): RefusalWords {
	const { label } = value;
	const at = writeClock(value.start);
	const minutes = Math.ceil(needs);
	return {
		code: TOO_LONG,
		received: say`${minutes} minutes`,
		allowed: say`at most ${has} minutes`,
		message: label
			? say`${label} at ${at} needs ${minutes} minutes with the kits it prepares for, and has ${has} until the next round begins.`
			: say`The round at ${at} needs ${minutes} minutes with the kits it prepares for, and has ${has} until the next round begins.`,
		place: { file: roundsSheet.file, line, column: "start" },
	};
}
