import type { Counts } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poissonTerms } from "../counts/poisson.ts";
import { spread } from "../counts/spread.ts";

/** Chances below this are not followed. */
const SMALLEST = 1e-16;

/**
 * How likely each use is of what goes by rounds that run, loads and descalings alone: by how
 * many rounds run and how many loads they make together. Exact however many steps it is counted
 * in; the first round that runs descales, so that n rounds take ceil(n / every) descalings.
 *
 * @param means mean kits of each round
 * @param useOf in steps
 */
export function roundsAndLoads(
	means: readonly number[],
	kitsInLoad: number,
	useOf: (rounds: number, loads: number) => number,
): Counts {
	const ofRounds = means.map((m) => groupsOf(poissonTerms(m), kitsInLoad));
	const most = ofRounds.reduce((sum, { first, chance }) => sum + first + chance.length - 1, 0);
	const width = most + 1;
	let chances = new Float64Array(width * (means.length + 1));
	chances[0] = 1;
	ofRounds.forEach(({ first, chance }, round) => {
		const next = new Float64Array(chances.length);
		for (let at = 0; at < width * (round + 1); at++) {
			const before = chances[at] as number;
			if (before < SMALLEST) continue;
			chance.forEach((p, i) => {
				const loads = first + i;
				const to = at + loads + (loads > 0 ? width : 0);
				next[to] = (next[to] as number) + before * p;
			});
		}
		chances = next;
	});
	return spread({ first: 0, chance: chances }, (at) =>
		chances[at] === 0 ? 0 : useOf(Math.floor(at / width), at % width),
	);
}
