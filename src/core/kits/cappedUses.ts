import { poisson } from "../counts/poisson.ts";

/** How likely each number of uses is; all from `kits` on count as `kits`. */
export function cappedUses(kits: number, meanUses: number): Float64Array {
	const { first, chance } = poisson(meanUses);
	const uses = new Float64Array(kits + 1);
	chance.forEach((p, i) => {
		const at = Math.min(kits, first + i);
		uses[at] = (uses[at] as number) + p;
	});
	return uses;
}
