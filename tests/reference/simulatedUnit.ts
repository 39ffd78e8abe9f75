import { meanOfBatches, randomNumbers, waitingTime } from "./randomNumbers.ts";

/** A unit that is played through event by event, each kit with its own age. */
export interface PlayedUnit {
	readonly kits: number;
	readonly usesPerDay: number;
	/** How the uses of a day spread over 24 hours; they add up to 1. */
	readonly shares: readonly number[];
	/** Starts of the rounds of a day, in minutes after midnight. */
	readonly starts: readonly number[];
	/** How long a round with this many kits takes, in minutes. */
	readonly minutes: (kits: number) => number;
	/** Minutes from a round's start to its kits being ready, as the plan counts on. */
	readonly plannedMinutes: number;
	/** Days a kit may be used after the day it became ready; infinite where it never goes out of date. */
	readonly lifeDays: number;
	readonly renewal: "when_expired" | "in_time";
}

interface Played {
	readonly unmetPer1000: { readonly mean: number; readonly standardError: number };
	readonly renewedPerDay: { readonly mean: number; readonly standardError: number };
}

const DAY = 1440;
const BATCHES = 100;

/**
 * Plays years of a unit.
 *
 * The oldest ready kit is used first. A need that finds none ready waits, and sends a
 * kit to a round: one that comes back, or, where a round begins first, one of that round.
 */
export function played(unit: PlayedUnit, days: number, seed: number): Played {
	const { kits, starts, plannedMinutes, lifeDays, renewal } = unit;
	// Asked at every round.
	const minutes = Array.from({ length: kits + 1 }, (_, n) => unit.minutes(n));
	const random = randomNumbers(seed);
	/** Last minute of each ready kit, oldest first. */
	let ready: number[] = Array.from({ length: kits }, () => (lifeDays + 1) * DAY);
	let waiting = 0;
	let inRound = 0;
	let backlog = 0;
	let roundEnds = Number.POSITIVE_INFINITY;
	let round = 0;
	let day = 0;
	let nextUse = 0;
	let uses = 0;
	let unmet = 0;
	let renewed = 0;
	const busiest = Math.max(...unit.shares);
	const perMinute = (unit.usesPerDay * busiest) / 60;
	const advanceUse = () => {
		for (;;) {
			nextUse += waitingTime(random, perMinute);
			if (random() * busiest < (unit.shares[Math.floor((nextUse % DAY) / 60)] as number)) return;
		}
	};
	const startOf = (index: number, of: number) => of * DAY + (starts[index] as number);
	const endRound = () => {
		const lastMinute = (Math.floor(roundEnds / DAY) + lifeDays + 1) * DAY;
		for (let i = 0; i < inRound; i++) ready.push(lastMinute);
		inRound = 0;
		roundEnds = Number.POSITIVE_INFINITY;
		const taken = Math.min(backlog, ready.length);
		ready.splice(0, taken);
		waiting += taken;
		backlog -= taken;
	};
	const expire = (now: number) => {
		while (ready.length > 0 && (ready[0] as number) <= now) {
			ready.shift();
			waiting++;
			renewed++;
		}
	};
	const renewInTime = (readyAgain: number) => {
		while (ready.length > 0 && (ready[0] as number) < readyAgain) {
			ready.shift();
			waiting++;
			renewed++;
		}
		const [oldest, second] = ready;
		if (oldest !== undefined && oldest === second && oldest < readyAgain + 2 * DAY) {
			ready.shift();
			waiting++;
			renewed++;
		}
	};
	const beginRound = (now: number) => {
		const last = round === starts.length - 1;
		const next = last ? startOf(0, day + 1) : startOf(round + 1, day);
		if (renewal === "in_time") renewInTime(next + plannedMinutes);
		round = last ? 0 : round + 1;
		if (last) day++;
		let most = kits;
		while (most > 1 && (minutes[most] as number) > next - now) most--;
		const taken = Math.min(waiting, most);
		waiting -= taken;
		inRound = taken;
		if (taken + waiting > 0 || backlog > 0) {
			// Needs that wait beyond the kits go along.
			backlog = 0;
			if (taken > 0) roundEnds = now + (minutes[taken] as number);
		}
	};
	advanceUse();
	const perBatch = days / BATCHES;
	const unmetOf: number[] = [];
	const renewedOf: number[] = [];
	const warmUp = 60;
	for (let batch = -1; batch < BATCHES; batch++) {
		const until = (warmUp + (batch + 1) * perBatch) * DAY;
		uses = 0;
		unmet = 0;
		renewed = 0;
		for (;;) {
			const nextRound = startOf(round, day);
			const expiry = ready[0] ?? Number.POSITIVE_INFINITY;
			const now = Math.min(nextRound, roundEnds, expiry, nextUse);
			if (now > until) break;
			if (now === roundEnds) endRound();
			else if (now === expiry) expire(now);
			else if (now === nextRound) beginRound(now);
			else {
				uses++;
				if (ready.length > 0) {
					ready.shift();
					waiting++;
				} else {
					unmet++;
					backlog++;
				}
				advanceUse();
			}
		}
		if (batch < 0) continue;
		unmetOf.push((1000 * unmet) / Math.max(1, uses));
		renewedOf.push(renewed / perBatch);
	}
	ready = [];
	return { unmetPer1000: meanOfBatches(unmetOf), renewedPerDay: meanOfBatches(renewedOf) };
}
