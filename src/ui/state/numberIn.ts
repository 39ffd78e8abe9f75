import type { Figure } from "../../core/calculation.ts";
import { valueIn } from "../../core/outcome.ts";

/** The number in a cell; undefined where it has none. */
export function numberIn(cell: Figure<number | null> | undefined): number | undefined {
	return (cell && valueIn(cell)) ?? undefined;
}

/** The text in a cell; "" where it has none. */
export function wordIn(cell: Figure<string | null> | undefined): string {
	return (cell && valueIn(cell)) ?? "";
}
