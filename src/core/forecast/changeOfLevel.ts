/** A lasting change of the level of births, and what was recorded before and after. */
export interface ChangeOfLevel {
	/** The day on which the change began, counted from the register's first, which is 0. */
	readonly beganOn: number;
	/** The day on which it could be told. */
	readonly toldOn: number;
	/** Births a day before and from the day on which it began, weekdays evened out. */
	readonly before: number;
	readonly after: number;
}

/** Days recorded at one level before a change from it is looked for. */
const FEWEST_DAYS = 28;
/** A change that lasts has seen every weekday. */
const LASTING_DAYS = 7;
/** Times the level that the chart is set to find soonest. */
const CHANGE = 1.4;
/** The chart's limit h: how much likelier the change has to be, in logarithm. */
const LIMIT = 6;

/** No single day says more than this: one odd day is no change that lasts (estimate). */
const MOST_OF_A_DAY = 3;

/** One side of the chart: evidence for a change since the day on which it began to gather. */
interface Side {
	readonly times: number;
	evidence: number;
	since: number;
}

/**
 * The last lasting change of level in a register, by two Poisson CUSUM charts.
 *
 * Each day adds the logarithm of how much likelier its births are at 1.4 times the level
 * so far, or at 1/1.4 of it: y·ln c − (c − 1)·μ, never below 0; above 6, and a week
 * after it began, a change is told, and the level before it is learned anew from there.
 * The level so far is the mean of the days since the last change, weekday factors
 * allowed for. With days that vary more than Poisson each counts 1/(1 + μ/r).
 *
 * @param counts births of each day, null where not recorded
 * @param factors weekday factor of each day, the first day's first, repeating
 * @param daySpread 1/r, 0 where days are Poisson
 */
export function changeOfLevel(
	counts: readonly (number | null)[],
	factors: readonly number[],
	daySpread: number,
): ChangeOfLevel | undefined {
	let last: ChangeOfLevel | undefined;
	for (;;) {
		const next = firstChange(counts, factors, daySpread, last?.beganOn ?? 0);
		if (!next) return last;
		last = next;
	}
}

function firstChange(
	counts: readonly (number | null)[],
	factors: readonly number[],
	daySpread: number,
	from: number,
): ChangeOfLevel | undefined {
	const sides: Side[] = [CHANGE, 1 / CHANGE].map((times) => ({ times, evidence: 0, since: from }));
	let births = 0;
	let days = 0;
	let recorded = 0;
	for (let day = from; day < counts.length; day++) {
		const count = counts[day] ?? null;
		if (count === null) continue;
		const factor = factors[day % factors.length] as number;
		if (recorded >= FEWEST_DAYS) {
			const mean = (factor * births) / days;
			for (const side of sides) {
				if (side.evidence === 0) side.since = day;
				const gain = count * Math.log(side.times) - mean * (side.times - 1);
				const told = Math.min(MOST_OF_A_DAY, gain / (1 + mean * daySpread));
				side.evidence = Math.max(0, side.evidence + told);
				if (side.evidence > LIMIT && day - side.since + 1 >= LASTING_DAYS)
					return {
						beganOn: side.since,
						toldOn: day,
						before: levelOf(counts, factors, from, side.since),
						after: levelOf(counts, factors, side.since),
					};
			}
		}
		births += count;
		days += factor;
		recorded++;
	}
	return undefined;
}

/** Births a mean day over some days of the register. */
function levelOf(
	counts: readonly (number | null)[],
	factors: readonly number[],
	from: number,
	to = counts.length,
): number {
	let births = 0;
	let days = 0;
	for (let day = from; day < to; day++) {
		const count = counts[day] ?? null;
		if (count === null) continue;
		births += count;
		days += factors[day % factors.length] as number;
	}
	return births / days;
}
