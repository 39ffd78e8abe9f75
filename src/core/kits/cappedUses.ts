import type { Counts } from "../counts/counts.ts";

/** How likely each number of uses is; all from `kits` on count as `kits`. */
export function cappedUses(kits: number, { first, chance }: Counts): Float64Array {
	const uses = new Float64Array(kits + 1);
	for (let i = 0; i < chance.length; i++) {
		const at = Math.min(kits, first + i);
		uses[at] = (uses[at] as number) + (chance[i] as number);
	}
	return uses;
}
