import { describe, expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { timetable } from "../../../../src/core/plan/rounds/timetable.ts";
import {
	gapsBetween,
	kitsOfFullestRound,
	turnaroundMinutes,
} from "../../../../src/core/plan/rounds/turnaroundMinutes.ts";
import { readTable } from "../../../../src/core/read/readTable.ts";
import { soaks } from "../../../../src/core/rounds/loads.ts";
import { roundMinutes } from "../../../../src/core/rounds/roundMinutes.ts";
import { oneRound, type RoundsOfDay } from "../../../../src/core/rounds/roundsOfDay.ts";
import type { Step } from "../../../../src/core/rounds/step.ts";
import { roundsSheet } from "../../../../src/core/sheets/rounds.ts";
import { answerOf, refusalOf } from "../../answerOf.ts";
import { tableOf } from "../../smallUnit.ts";

describe("gaps between rounds", () => {
	test.each([
		[
			[420, 840, 1260],
			[420, 420, 600],
		],
		[[420], [1440]],
		[
			[0, 1439],
			[1439, 1],
		],
	])("%j: %j", (starts, gaps) => {
		expect(gapsBetween(starts)).toEqual(gaps);
	});
});

describe("minutes of a round", () => {
	const step = (basis: Step["basis"], minutes: number): Step => ({
		step: basis,
		basis,
		minutes,
		hands_on: "yes",
	});
	const steps = [step("round", 40), step("kit", 50), step("load", 20)];
	test.each([
		[1, 1, 3, 110],
		[2, 1, 3, 160],
		[2, 2, 3, 110],
		[3, 1, 3, 210],
		[4, 1, 3, 280],
		[4, 2, 1, 220],
		[0, 1, 3, 40],
	])("%d kits, %d people, %d kits a soak: %d", (kits, workers, kitsInLoad, minutes) => {
		expect(answerOf(roundMinutes, { steps, kits, workers, loads: soaks(kitsInLoad) })).toBe(
			minutes,
		);
	});

	test("without steps they are not known", () => {
		expect(
			refusalOf(roundMinutes, { steps: [], kits: 1, workers: 1, loads: soaks(3) }),
		).toMatchObject([{ code: "no-steps", file: "steps.csv" }]);
	});
});

describe("kits of the fullest round", () => {
	const day = (kits: number[], starts = [420, 840, 1260]): RoundsOfDay => ({
		kind: "in_rounds",
		starts,
		kits,
		byKind: [kits],
	});
	test.each([
		["the round with most kits counts, whatever its gap", [day([1, 3, 1])], 50, 6],
		["of several days the busiest", [day([1, 0, 0]), day([3, 0, 0])], 50, 6],
		["equal gaps: any of them", [day([1, 3], [0, 720])], 50, 6],
		["at most the kits in service", [day([3, 3, 3])], 4, 4],
		["at least one", [day([0.001, 0, 0])], 50, 1],
		["one even without kits in service", [day([3, 0, 0])], 0, 1],
	])("%s", (_what, days, kitsInService, kits) => {
		expect(answerOf(kitsOfFullestRound, { days, confidence: 0.95, kitsInService })).toBe(kits);
	});
});

const table = (...starts: string[]) =>
	timetable(readTable(roundsSheet, tableOf(["start,label", ...starts].join("\n"))));

describe("the timetable", () => {
	test("is in the order of the clock", () => {
		expect(table("21:00,c", "07:00,a", "14:00,b").starts.outcome).toEqual({
			ok: true,
			value: [420, 840, 1260],
		});
	});

	test.each([
		["no rounds", [], ["no-rounds"]],
		["a time nobody can read", ["07:00,a", "noon,b"], ["bad-cell"]],
		["the same time twice", ["07:00,a", "07:00,b"], ["doubled-row", "doubled-row"]],
	])("%s leave it without a value", (_what, rows, codes) => {
		const { starts, rounds } = table(...rows);
		expect(problemsOf(starts.outcome).map((p) => p.code)).toEqual(codes);
		expect(rounds.outcome.ok).toBe(false);
	});
});

describe("every round ends before the next begins", () => {
	const rounds = (...rows: string[]) => {
		const { outcome } = table(...rows).rounds;
		if (!outcome.ok) throw new Error("the rounds should be readable");
		return outcome.value;
	};
	const three = rounds("07:00,morning", "14:00,", "21:00,night");

	/** Rounds of one kit each, so long. */
	const lasting = (minutes: number) => ({
		minutes,
		length: { perRound: 0, perKit: minutes, loads: [] },
		confidence: 0.95,
		kitsInService: 1,
	});
	const days: RoundsOfDay[] = [
		{ kind: "in_rounds", starts: [420, 840, 1260], kits: [1, 1, 1], byKind: [[1, 1, 1]] },
	];

	test.each([110, 419, 420])("%d minutes fit", (minutes) => {
		expect(answerOf(turnaroundMinutes, { ...lasting(minutes), rounds: three, days })).toBe(minutes);
	});

	test("a round that is too long is named, with the minutes it needs and has", () => {
		const found = refusalOf(turnaroundMinutes, { ...lasting(420.5), rounds: three, days });
		expect(found).toMatchObject([
			{ code: "round-too-long", line: 2, received: "421 minutes", allowed: "at most 420 minutes" },
			{ code: "round-too-long", line: 3 },
		]);
		expect(found[0]?.message).toMatch(/^morning at 07:00 needs 421 minutes/);
		expect(found[1]?.message).toMatch(/^The round at 14:00/);
	});

	test("each by its own kits: a short gap after few is long enough", () => {
		const kits = [3, 0.01, 3];
		const own: RoundsOfDay[] = [
			{ kind: "in_rounds", starts: [420, 840, 1260], kits, byKind: [kits] },
		];
		const fits = { ...lasting(130), kitsInService: 3, rounds: three, days: own };
		expect(answerOf(turnaroundMinutes, fits)).toBe(130);
		const long = { ...fits, length: { ...fits.length, perKit: 150 } };
		expect(refusalOf(turnaroundMinutes, long).map((p) => p.line)).toEqual([2]);
	});

	test("all are named when none fits, the night's round up to the morning", () => {
		const found = refusalOf(turnaroundMinutes, { ...lasting(601), rounds: three, days });
		expect(found.map((p) => p.line)).toEqual([2, 3, 4]);
	});

	test("a single round has a day", () => {
		const one = { rounds: rounds("07:00,a"), days: [oneRound(1)] };
		expect(answerOf(turnaroundMinutes, { ...lasting(1440), ...one })).toBe(1440);
		expect(refusalOf(turnaroundMinutes, { ...lasting(1441), ...one })).toHaveLength(1);
	});
});
