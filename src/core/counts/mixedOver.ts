import { type Counts, TAIL } from "./counts.ts";
import type { LevelNode } from "./laguerreNodes.ts";

/**
 * A level that weighs less is left out as any tail is; it is far above the mean, and its counts would be the longest.
 * The levels beyond it weigh less still.
 */
export const NEVER = TAIL / 2;

/**
 * A count that depends on an uncertain level: its distributions at the level's nodes,
 * each with its node's weight.
 *
 * With one node, that node's count itself.
 *
 * @param countsAt how likely each number is at a multiple of the level's mean
 * @example mixedOver(levelNodes(10, 6), (factor) => poisson(6 * factor)) // as negativeBinomial(10, 6)
 */
export function mixedOver(
	nodes: readonly LevelNode[],
	countsAt: (factor: number) => Counts,
): Counts {
	const [only] = nodes;
	if (only && nodes.length === 1) return countsAt(only.factor);
	const parts = nodes
		.filter(({ weight }) => weight > NEVER)
		.map(({ factor, weight }) => ({ counts: countsAt(factor), weight }));
	const first = Math.min(...parts.map(({ counts }) => counts.first));
	const end = Math.max(...parts.map(({ counts }) => counts.first + counts.chance.length));
	const chance = new Float64Array(end - first);
	for (const { counts, weight } of parts) {
		const from = counts.first - first;
		for (let i = 0; i < counts.chance.length; i++)
			chance[from + i] = (chance[from + i] as number) + weight * (counts.chance[i] as number);
	}
	return { first, chance };
}
