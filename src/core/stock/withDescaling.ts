import type { Counts } from "../counts/counts.ts";
import { moved } from "../counts/spread.ts";
import { either, plus, sumOf } from "../counts/sumOf.ts";
import { whenRunning } from "./alikeUses.ts";
import { descaledTogether } from "./descaledTogether.ts";
import { FollowedAmounts } from "./followedAmounts.ts";

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
	if (used.length <= every) return withOneAtMost(perDescale, used, idle, most);
	return (
		descaledTogether(perDescale, every, used, idle, most) ??
		roundByRound(perDescale, every, used, idle, most)
	);
}

function roundByRound(
	perDescale: number,
	every: number,
	used: readonly Counts[],
	idle: readonly number[],
	most: number,
): Counts {
	const sinceDescaling = Array.from({ length: every }, () => new FollowedAmounts());
	const [none, last] = [sinceDescaling[0], sinceDescaling[every - 1]] as [Followed, Followed];
	none.begin();
	used.forEach((use, round) => {
		const still = idle[round] as number;
		const running = whenRunning(use, still);
		const descaling = moved(running, perDescale);
		// A descaling follows the last round before it; what it follows is known only before that round is added.
		const again = last.isPossible
			? plus(last.counts, every === 1 ? descaling : running, most)
			: undefined;
		for (let phase = every - 1; phase > 0; phase--) {
			const before = sinceDescaling[phase - 1] as Followed;
			const now = sinceDescaling[phase] as Followed;
			now.weigh(still);
			now.come(before, phase === 1 ? descaling : running, most);
		}
		none.weigh(still);
		if (again) none.add(again);
	});
	return sinceDescaling.reduce<Counts | undefined>(
		(all, phase) => (phase.isPossible ? either(all, phase.counts) : all),
		undefined,
	) as Counts;
}

type Followed = FollowedAmounts;

/** So few rounds that only the first that runs descales. */
function withOneAtMost(
	perDescale: number,
	used: readonly Counts[],
	idle: readonly number[],
	most: number,
): Counts {
	const never = idle.reduce((product, still) => product * still, 1);
	const running = whenRunning(sumOf(used, most), never);
	return either({ first: 0, chance: Float64Array.of(never) }, moved(running, perDescale));
}
