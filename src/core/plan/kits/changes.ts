import { type Figure, typedFigure } from "../../calculation.ts";
import { say } from "../../say.ts";
import { MOST_ROUNDS_MOVED } from "../../sheets/levers.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR, writeClock } from "../../values/clock.ts";
import { gapsBetween } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";

/** One thing that the manager could do differently. */
export interface Change {
	readonly name: string;
	/** The unit as it would then be. */
	readonly unit: UnitFigures;
	/** Several of these are tried and only the best is shown. */
	readonly oneOfMany: boolean;
	/** Kits of each kind more than now. */
	readonly moreKits: number;
}

/** How far, in hours, a round may be moved to look for a better hour. */
const HOURS_MOVED = [-3, -2, -1, 1, 2, 3];
const place = { file: "rounds.csv", line: null, column: "start" };

/** The unit as it is, and with one more kit, person, round, or a round at another hour. */
export function changes(unit: UnitFigures): Change[] {
	return [
		{ name: say`As it is now`, unit, moreKits: 0, oneOfMany: false },
		{ name: say`One more kit`, unit, moreKits: 1, oneOfMany: false },
		...onePersonMore(unit),
		...oneRoundMore(unit),
		...otherHours(unit),
	];
}

function onePersonMore(unit: UnitFigures): Change[] {
	const { settings } = unit.read;
	const workers = settings.workers_per_round;
	if (!workers.outcome.ok) return [];
	const more: Figure<number> = {
		...workers,
		outcome: { ok: true, value: workers.outcome.value + 1 },
	};
	const read = { ...unit.read, settings: { ...settings, workers_per_round: more } };
	return [
		{
			name: say`One more person in a round`,
			unit: { ...unit, read },
			moreKits: 0,
			oneOfMany: false,
		},
	];
}

function oneRoundMore(unit: UnitFigures): Change[] {
	const starts = startsOf(unit);
	if (starts.length === 0) return [];
	const longest = longestGap(starts);
	const gap = gapsBetween(starts)[longest] as number;
	const start = ((starts[longest] as number) + Math.round(gap / 2)) % MINUTES_PER_DAY;
	return [
		{
			name: say`One more round, at ${writeClock(start)}`,
			unit: withStarts(unit, [...starts, start]),
			moreKits: 0,
			oneOfMany: false,
		},
	];
}

/** The round after which the next one is longest in coming. */
function longestGap(starts: readonly number[]): number {
	const gaps = gapsBetween(starts);
	return gaps.indexOf(Math.max(...gaps));
}

function otherHours(unit: UnitFigures): Change[] {
	const starts = startsOf(unit);
	const timesKinds = starts.length * unit.kinds.length;
	if (timesKinds > MOST_ROUNDS_MOVED.timesKindsOfTwo) return [];
	const tooMany =
		starts.length > MOST_ROUNDS_MOVED.rounds || timesKinds > MOST_ROUNDS_MOVED.timesKinds;
	const before = longestGap(starts);
	const around = [before, (before + 1) % starts.length];
	return starts.flatMap((start, i) => {
		if (tooMany && !around.includes(i)) return [];
		return HOURS_MOVED.flatMap((hours) => {
			const moved = (start + hours * MINUTES_PER_HOUR + MINUTES_PER_DAY) % MINUTES_PER_DAY;
			if (starts.includes(moved)) return [];
			const [from, to] = [writeClock(start), writeClock(moved)];
			const name = tooMany
				? say`The ${from} round at ${to} instead (only two rounds tried)`
				: say`The ${from} round at ${to} instead`;
			return [
				{ name, unit: withStarts(unit, starts.with(i, moved)), moreKits: 0, oneOfMany: true },
			];
		});
	});
}

function startsOf({ afterEachUse, timetable }: UnitFigures): readonly number[] {
	return !afterEachUse && timetable.starts.outcome.ok ? timetable.starts.outcome.value : [];
}

function withStarts(unit: UnitFigures, starts: readonly number[]): UnitFigures {
	const sorted = [...starts].sort((a, b) => a - b);
	const rows = sorted.map((start) => ({ line: 0, value: { start, label: "" } }));
	return {
		...unit,
		timetable: {
			starts: typedFigure(say`Rounds start at`, say`minutes after midnight`, sorted, place),
			rounds: typedFigure(say`Rounds of the day`, "", rows, place),
		},
	};
}
