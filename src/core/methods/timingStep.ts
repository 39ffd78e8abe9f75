/** A step of a load, as far as its time goes. */
interface StepLength {
	readonly minutes: number;
	/** Whether it goes on by itself. */
	readonly waits: boolean;
}

/**
 * The step that times the boil or the steam: one that waits, of those long enough the one
 * nearest to the time wanted, and of such the last; what comes before it heats, what comes
 * after it cools. Where none is long enough it is the longest. Undefined where there is no step.
 */
export function timingStep<T extends StepLength>(
	steps: readonly T[],
	holdMinutes: number,
): T | undefined {
	const waiting = steps.filter(({ waits }) => waits);
	const asked = waiting.length > 0 ? waiting : steps;
	const long = asked.filter(({ minutes }) => minutes >= holdMinutes);
	const better =
		long.length > 0
			? (a: T, b: T) => a.minutes <= b.minutes
			: (a: T, b: T) => a.minutes >= b.minutes;
	return (long.length > 0 ? long : asked).reduce<T | undefined>(
		(best, step) => (best === undefined || better(step, best) ? step : best),
		undefined,
	);
}
