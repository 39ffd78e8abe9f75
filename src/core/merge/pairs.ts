import type { TextTable } from "../workbook.ts";

/** In place of a partner. */
export const ALONE = -1;

/** Which row of one table is which of another; ALONE where it has no counterpart. */
export interface Pairs {
	readonly ofOne: Int32Array;
	readonly ofOther: Int32Array;
}

export function noPairs(one: TextTable, other: TextTable): Pairs {
	return {
		ofOne: new Int32Array(one.rows.length).fill(ALONE),
		ofOther: new Int32Array(other.rows.length).fill(ALONE),
	};
}

export function pair({ ofOne, ofOther }: Pairs, one: number, other: number): void {
	ofOne[one] = other;
	ofOther[other] = one;
}
