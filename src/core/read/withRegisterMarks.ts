import { memoizeByObject } from "../memoize.ts";
import { registerMark } from "../record/registerMark.ts";
import type { ReadTable } from "./goodRow.ts";
import { kitMarks } from "./kitMarks.ts";

type OfKits = ReadTable<{ readonly kit: string }>;
type Row = OfKits["rows" | "badRows"][number];

/** Uses and checks with each kit under its mark in the register: a “k1” written at the bench is the list's K1. */
export function withRegisterMarks<
	T extends { readonly kits: OfKits; readonly uses: OfKits; readonly checks: OfKits },
>(tables: T): T {
	const { kits, uses, checks } = tables;
	return { ...tables, uses: withMarks(uses, kits), checks: withMarks(checks, kits) };
}

/** The same object where every kit is written as the register has it. */
const withMarks = memoizeByObject((table: OfKits, kits: OfKits): OfKits => {
	const markOf = registerMark(kitMarks(kits));
	const isSame = ({ value: { kit } }: Row) => kit === undefined || markOf(kit) === kit;
	if (table.rows.every(isSame) && table.badRows.every(isSame)) return table;
	const marked = <R extends Row>(row: R): R =>
		isSame(row) ? row : { ...row, value: { ...row.value, kit: markOf(row.value.kit as string) } };
	return { ...table, rows: table.rows.map(marked), badRows: table.badRows.map(marked) };
});
