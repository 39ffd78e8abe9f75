import { DAY, hourWeights, roundMinutes, type Unit } from "./unit.ts";

/** What happened on one day. */
export interface PlayedDay {
	births: number;
	kits_used: number;
	kits_expired: number;
	rounds: number;
	loads: number;
	/** Needs that found no kit ready. */
	unmet: number;
}

interface Kit {
	/** Last minute at which it may be used. */
	readonly until: number;
}

/** Kits on their way back: when they are ready; those that only stand for an unmet need come back as none. */
interface Batch {
	readonly ready: number;
	readonly kits: number;
}

/**
 * A unit's days one after the other: each birth at its minute, each kit with its age.
 *
 * The oldest ready kit is used first. It may be used through the end of the day that is
 * `readyLifeDays` after the one on which it became ready; then it joins the next round.
 * After each use, one person works on a kit from beginning to end, one after the other.
 * A need that finds none ready still sends a kit to the next round, which is missing
 * when that round comes back.
 *
 * @param birthsOn births of each day
 */
export function playedDays(
	unit: Unit,
	birthsOn: readonly number[],
	random: () => number,
): PlayedDay[] {
	const weights = hourWeights(unit);
	const all = weights.reduce((sum, weight) => sum + weight, 0);
	const untilFrom = (ready: number) => (Math.floor(ready / DAY) + unit.readyLifeDays + 1) * DAY;
	let shelf: Kit[] = Array.from({ length: unit.kits }, (_, i) => ({
		until: untilFrom(-Math.floor((i * unit.readyLifeDays) / unit.kits) * DAY),
	})).sort((a, b) => a.until - b.until);
	let waiting = 0;
	let missing = 0;
	let batches: Batch[] = [];
	let freeAt = 0;

	const comeBack = (minute: number) => {
		for (const { ready, kits } of batches)
			if (ready <= minute) {
				const owed = Math.min(missing, kits);
				missing -= owed;
				for (let i = owed; i < kits; i++) shelf.push({ until: untilFrom(ready) });
			}
		batches = batches.filter(({ ready }) => ready > minute);
		shelf.sort((a, b) => a.until - b.until);
	};
	const sendOff = (minute: number, day: PlayedDay) => {
		if (waiting === 0) return;
		const begins = unit.reprocessing === "in_rounds" ? minute : Math.max(minute, freeAt);
		const ready = begins + roundMinutes(unit, Math.min(waiting, unit.kits));
		batches.push({ ready, kits: waiting });
		if (unit.hands === 1) freeAt = ready;
		day.rounds++;
		day.loads += Math.ceil(waiting / unit.kitsInLoad);
		waiting = 0;
	};
	const outOfDate = (minute: number, day: PlayedDay) => {
		const gone = shelf.filter(({ until }) => until <= minute).length;
		shelf = shelf.slice(gone);
		day.kits_expired += gone;
		for (let i = 0; i < gone; i++) {
			waiting++;
			if (unit.reprocessing === "after_each_use") sendOff(minute, day);
		}
	};

	return birthsOn.map((births, number) => {
		const day: PlayedDay = {
			births,
			kits_used: 0,
			kits_expired: 0,
			rounds: 0,
			loads: 0,
			unmet: 0,
		};
		const from = number * DAY;
		const needs: number[] = [];
		for (let i = 0; i < births; i++)
			if (random() < unit.kitsPer100 / 100) needs.push(from + minuteOfDay(weights, all, random));
		const rounds =
			unit.reprocessing === "in_rounds" ? unit.starts.map((start) => from + start) : [];
		const events = [
			...needs.map((minute) => ({ minute, isRound: false })),
			...rounds.map((minute) => ({ minute, isRound: true })),
		].sort((a, b) => a.minute - b.minute);
		comeBack(from);
		outOfDate(from, day);
		for (const { minute, isRound } of events) {
			comeBack(minute);
			if (isRound) {
				sendOff(minute, day);
				continue;
			}
			day.kits_used++;
			if (shelf.length > 0) shelf.shift();
			else {
				day.unmet++;
				missing++;
			}
			waiting++;
			if (unit.reprocessing === "after_each_use") sendOff(minute, day);
		}
		return day;
	});
}

function minuteOfDay(weights: readonly number[], all: number, random: () => number): number {
	let place = random() * all;
	let hour = 0;
	while (place >= (weights[hour] as number)) place -= weights[hour++] as number;
	return hour * 60 + (60 * place) / (weights[hour] as number);
}
