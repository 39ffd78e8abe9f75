import type { ReadTables } from "../../read/readWorkbook.ts";

/** Name of the chlorine product that rounds are mixed from; undefined where none is said to be in use. */
export function nameInUse({ chlorine }: Pick<ReadTables, "chlorine">): string | undefined {
	return chlorine.rows.find(({ value }) => value.in_use === "yes")?.value.product;
}
