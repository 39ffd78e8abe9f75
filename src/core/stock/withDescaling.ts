import { always, type Counts } from "../counts/counts.ts";
import { moved } from "../counts/spread.ts";
import { either, plus } from "../counts/sumOf.ts";

/**
 * Rounds in turn (a Markov chain), keeping apart how many have run since the last descaling.
 *
 * The first round that runs descales, so that n rounds take ceil(n / every) descalings.
 *
 * @param perDescale use of one descaling, in steps
 * @param used use of each round, nothing where it does not run
 * @param idle chance that each round does not run
 * @param most use beyond it may be left out
 */
export function withDescaling(
	perDescale: number,
	every: number,
	used: readonly Counts[],
	idle: readonly number[],
	most: number,
): Counts {
	let sinceDescaling: (Counts | undefined)[] = [always(0)];
	used.forEach((use, round) => {
		const still = idle[round] as number;
		const running = whenRunning(use, still);
		const next: (Counts | undefined)[] = [];
		sinceDescaling.forEach((before, phase) => {
			if (!before) return;
			const after = (phase + 1) % every;
			const added = plus(phase === 0 ? moved(before, perDescale) : before, running, most);
			next[phase] = either(next[phase], { ...before, chance: before.chance.map((p) => p * still) });
			next[after] = either(next[after], added);
		});
		sinceDescaling = next;
	});
	return sinceDescaling.reduce<Counts | undefined>(
		(all, phase) => (phase ? either(all, phase) : all),
		undefined,
	) as Counts;
}

/** The use of a round with the chance of its not running taken out of the amount 0. */
function whenRunning(use: Counts, idle: number): Counts {
	const chance = Float64Array.from(use.chance);
	if (use.first === 0) chance[0] = Math.max(0, (chance[0] as number) - idle);
	return { first: use.first, chance };
}
