import type { TextTable, Workbook } from "../workbook.ts";
import type { Descent, Save, SheetDescent } from "./descent.ts";
import { digest } from "./digest.ts";

/** Of a save that is known by its content: no random one begins so. */
const BY_CONTENT = "=";

/**
 * The descent of a workbook that remembers nothing. Its beginning is known by its texts, so
 * two copies that were opened from the same old file have the same one.
 */
export function rootDescent({ tables }: Workbook): Descent {
	const id = BY_CONTENT + digest(tables);
	return {
		saves: [{ id, at: "", by: "" }],
		sheets: Object.fromEntries(
			Object.entries(tables).map(([file, table]) => [file, bornTogether(table, id)]),
		),
	};
}

/** A sheet whose rows all come from one save. */
export function bornTogether(table: TextTable, save: string): SheetDescent {
	return {
		table,
		origins: table.rows.map((_, at) => `${save}.${at}`),
		changed: new Map(),
		gone: new Map(),
	};
}

/**
 * A sheet of which nothing is known, since another program changed it or what is remembered
 * of it cannot be true; and the save it stands for, which is known by its content.
 */
export function unknownDescent(file: string, table: TextTable) {
	const save: Save = { id: BY_CONTENT + digest({ [file]: table }), at: "", by: "" };
	const descent: SheetDescent = { ...bornTogether(table, save.id), altered: true };
	return { save, descent };
}
