import { calculation, Refusal, type RefusalWords } from "../../calculation.ts";
import { setAside } from "../../counts/counts.ts";
import { confidenceInput } from "../../counts/setAsideOf.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { kitsOfRound } from "../../rounds/roundsThatRun.ts";
import { say } from "../../say.ts";
import { type RoundsRow, roundsSheet } from "../../sheets/rounds.ts";
import { commonPractice } from "../../sources.ts";
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
 * Kits in the fullest round the plan is made for: the set-aside number of what
 * comes in over the longest gap between rounds, at most the kits in service.
 *
 * Never fewer than one, because a round without a kit does not run.
 */
export const kitsOfFullestRound = calculation<KitsInputs, number>({
	key: "kits_of_fullest_round",
	label: say`Kits in the round after the longest gap, set aside`,
	unit: say`kits`,
	formula: say`The smallest number that is enough, as surely as the plan asks, for what comes in over the longest gap between rounds; at most the kits in service, at least one.`,
	source: commonPractice,
	inputs: {
		days: { label: say`Kits in each round, expected`, unit: say`kits` },
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
	compute: ({ days, confidence, kitsInService }) => {
		const each = days.flatMap((day) =>
			afterLongestGap(day).map((round) => setAside(kitsOfRound(day, round), confidence)),
		);
		return Math.max(1, Math.min(Math.max(...each), kitsInService));
	},
});

function afterLongestGap(day: RoundsOfDay): number[] {
	if (day.kind === "after_each_use") return [];
	const gaps = gapsBetween(day.starts);
	const longest = Math.max(...gaps);
	// gaps[i] is the gap after round i; its kits are those of round i + 1.
	return day.kits.flatMap((_, i) =>
		gaps[(i + gaps.length - 1) % gaps.length] === longest ? [i] : [],
	);
}

interface FitInputs {
	readonly minutes: number;
	readonly rounds: readonly GoodRow<RoundsRow>[];
}

/** From the start of a round to its kits being ready; every round must end before the next begins. */
export const turnaroundMinutes = calculation<FitInputs, number>({
	key: "turnaround_minutes",
	label: say`Minutes until the kits of a round are ready`,
	unit: "min",
	formula: say`Minutes of the fullest round, which must end before the next round begins.`,
	source: commonPractice,
	inputs: {
		minutes: { label: say`Minutes of the fullest round`, unit: "min", min: 0 },
		rounds: { label: say`Rounds of the day`, unit: "" },
	},
	example: {
		inputs: { minutes: 110, rounds: [{ line: 2, value: { start: 420, label: "" } }] },
		result: 110,
		within: 0,
	},
	compute: ({ minutes, rounds }) => {
		const gaps = gapsBetween(rounds.map((round) => round.value.start));
		const late = rounds.flatMap((round, i) =>
			minutes > (gaps[i] as number) ? [tooLong(round, minutes, gaps[i] as number)] : [],
		);
		return late.length > 0 ? new Refusal(late) : minutes;
	},
});

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
		code: "round-too-long",
		received: say`${minutes} minutes`,
		allowed: say`at most ${has} minutes`,
		message: label
			? say`${label} at ${at} needs ${minutes} minutes with the kits set aside for it, and has ${has} until the next round begins.`
			: say`The round at ${at} needs ${minutes} minutes with the kits set aside for it, and has ${has} until the next round begins.`,
		place: { file: roundsSheet.file, line, column: "start" },
	};
}
