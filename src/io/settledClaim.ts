import type { BlockTable } from "../core/read/block/blockTable.ts";
import type { FileQuestion } from "./fileQuestion.ts";

/** A file that says it is a sheet, read as text. */
export interface Claimant {
	/** As it was given. */
	readonly name: string;
	readonly read: BlockTable;
}

/**
 * The file that counts for a sheet: the only one, one of several that say the same, or the
 * one that the person chose; else the question which.
 *
 * @param claimants at least one
 */
export function settledClaim(
	claimants: readonly Claimant[],
	chosen: string | undefined,
): Claimant | FileQuestion {
	const [first] = claimants as readonly [Claimant];
	const { file } = first.read.sheet;
	const wanted = claimants.find(({ name }) => name === chosen);
	if (wanted) return wanted;
	const said = new Set(
		claimants.map(({ read: { table } }) => JSON.stringify([table.header, table.rows])),
	);
	if (said.size === 1) return first;
	return { about: "file", file, names: claimants.map(({ name }) => name) };
}
