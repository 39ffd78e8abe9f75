import type { Counts } from "../counts/counts.ts";
import { cappedUses } from "./cappedUses.ts";

/** How likely each number of kits is to be renewed, by the kits used before. */
export type RenewedGiven = (used: number) => Counts;

/** Row u of the table, of kits + 1 numbers: the chance of 0, 1, … renewals where u kits were used. */
export function givenInTable(kits: number, table: Float64Array): RenewedGiven {
	const width = kits + 1;
	return (used) => ({ first: 0, chance: table.subarray(used * width, (used + 1) * width) });
}

/** The same whatever was used, as far as there are kits. */
export function givenApart(kits: number, renewed: Counts): RenewedGiven {
	const most = renewed.first + renewed.chance.length - 1;
	return (used) =>
		used + most <= kits ? renewed : { first: 0, chance: cappedUses(kits - used, renewed) };
}

/** Kits used and renewed together, of `used.length` − 1; never more than there are. */
export function usedAndRenewed(used: Float64Array, given: RenewedGiven): Float64Array {
	const kits = used.length - 1;
	const sums = new Float64Array(kits + 1);
	used.forEach((likely, u) => {
		if (likely === 0) return;
		const { first, chance } = given(u);
		for (let i = 0; i < chance.length; i++) {
			const at = Math.min(kits, u + first + i);
			sums[at] = (sums[at] as number) + likely * (chance[i] as number);
		}
	});
	return sums;
}
