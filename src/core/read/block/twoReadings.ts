import type { BlockCell } from "./blockTable.ts";

/** A cell that a custom decides: its text in the clear form under either custom; undefined where it then means nothing. */
export interface TwoReadings {
	readonly cell: BlockCell;
	readonly first: string | undefined;
	readonly second: string | undefined;
	/** Two texts that mean the same, such as "1400" and "1400". */
	isSame(one: string, other: string): boolean;
	/** The custom that other sheets cannot vouch for here: they may come from another program. */
	readonly ownOnly?: Which;
}

/** Which of two customs is meant. */
export type Which = "first" | "second";

/** The custom under which a text means something, where it does so under one only. */
export function onlyOne({ first, second }: TwoReadings): Which | undefined {
	if (first !== undefined && second === undefined) return "first";
	if (second !== undefined && first === undefined) return "second";
	return undefined;
}

/** True where a text means one thing under one custom and another under the other. */
export function isOpen({ first, second, isSame }: TwoReadings): boolean {
	return first !== undefined && second !== undefined && !isSame(first, second);
}

/** Of an open text the custom under which its column takes it, where it takes one reading only. */
export function allowedOne(open: TwoReadings): Which | undefined {
	const takes = (text: string | undefined) => open.cell.column.value.schema.safeParse(text).success;
	const [first, second] = [takes(open.first), takes(open.second)];
	return first === second ? undefined : first ? "first" : "second";
}

/** The custom that all texts that tell agree on; "both" where they do not; undefined where none tells. */
export function agreed(votes: readonly (Which | undefined)[]): Which | "both" | undefined {
	const said = new Set(votes.filter((vote) => vote !== undefined));
	return said.size > 1 ? "both" : [...said][0];
}
