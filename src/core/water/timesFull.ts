/** Minutes through which some stoves, or some pots, are taken. */
export interface TakenFor {
	readonly from: number;
	readonly to: number;
	readonly count: number;
}

/** Shorter overlaps than this, in minutes, are rounding. */
export const NEAR = 1e-6;

/** A stretch of time in which there is no room. */
interface Full {
	readonly from: number;
	readonly to: number;
}

/** When more than `most` of something is taken: stretch after stretch, earliest first. */
export function timesFull(taken: readonly TakenFor[], most: number): Full[] {
	const froms = eachOf(taken, ({ from }) => from);
	// What ends where the next begins gives it its place.
	const tos = eachOf(taken, ({ to }) => to - NEAR);
	const full: Full[] = [];
	let ended = 0;
	let since = Number.NaN;
	for (let begun = 0; ended < tos.length; ) {
		const from = froms[begun] ?? Number.POSITIVE_INFINITY;
		const to = tos[ended] as number;
		if (to <= from) {
			if (begun - ended === most + 1) full.push({ from: since, to });
			ended++;
		} else {
			if (begun - ended === most) since = from;
			begun++;
		}
	}
	return full;
}

/** A time of each stove or pot by itself, earliest first. */
function eachOf(taken: readonly TakenFor[], timeOf: (one: TakenFor) => number): Float64Array {
	const times = new Float64Array(taken.reduce((sum, { count }) => sum + count, 0));
	let i = 0;
	for (const one of taken) {
		times.fill(timeOf(one), i, i + one.count);
		i += one.count;
	}
	return times.sort();
}

/** Where the first of these stretches begins that lies within some minutes from a start on. */
export function fullWithin(
	full: readonly Full[],
	start: number,
	minutes: number,
): number | undefined {
	const found = full.find(({ to }) => to > start);
	return found && found.from < start + minutes - NEAR ? found.from : undefined;
}
