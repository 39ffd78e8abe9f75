import { tablesIn } from "../../core/edit/tablesIn.ts";
import type { Descent, SheetDescent } from "../../core/merge/descent.ts";

/** A descent that comes out of a browser's storage; undefined where it is not one any more. */
export function keptDescent(kept: unknown): Descent | undefined {
	const { saves, sheets } = (kept ?? {}) as Partial<Descent>;
	const isWhole =
		Array.isArray(saves) &&
		saves.every(isSave) &&
		typeof sheets === "object" &&
		Object.values(sheets).every(isSheet);
	return isWhole ? (kept as Descent) : undefined;
}

function isSave(save: unknown): boolean {
	const { id, at, by } = (save ?? {}) as Record<string, unknown>;
	return [id, at, by].every((text) => typeof text === "string");
}

function isSheet(sheet: unknown): boolean {
	const { table, origins, changed, gone } = (sheet ?? {}) as Partial<SheetDescent>;
	return (
		tablesIn({ tables: { table } }).damaged.length === 0 &&
		Array.isArray(origins) &&
		origins.length === table?.rows.length &&
		origins.every((origin) => typeof origin === "string") &&
		changed instanceof Map &&
		[...changed.values()].every((columns) => columns instanceof Map) &&
		gone instanceof Map
	);
}
