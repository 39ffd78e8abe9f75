import type { Column } from "./column.ts";
import { upTo } from "./upTo.ts";

/**
 * A number as its column shows it: to the column's decimals, up where it must be enough.
 * A column that names no decimals shows it as it is.
 *
 * @example rounded({ decimals: 1, rounds: "up" }, 12.31) // 12.4
 */
export function rounded(
	{ decimals, rounds }: Pick<Column<unknown>, "decimals" | "rounds">,
	value: number,
): number {
	if (decimals === undefined) return value;
	const near = rounds === "up" ? upTo(value, 10 ** -decimals) : value;
	return Number(near.toFixed(decimals));
}
