import type { TextTable } from "../workbook.ts";
import { columnNames } from "./columnNames.ts";

/** From this share of common texts on, two rows may be one that was changed. */
export const ALIKE = 0.5;

/** What gives the share of texts that a row of one table has in common with one of another; their marks do not count. */
export function alikeness(one: TextTable, other: TextTable) {
	const [of, to] = [columnNames(one), columnNames(other)];
	const names = [...of, ...to.filter((name) => !of.includes(name))].filter((name) => name !== "id");
	const places = names.map((name) => [of.indexOf(name), to.indexOf(name)] as const);
	return (a: number, b: number): number => {
		let [same, all] = [0, 0];
		for (const [x, y] of places) {
			const text = textAt(one, a, x);
			const otherText = textAt(other, b, y);
			if (text === "" && otherText === "") continue;
			all++;
			if (text === otherText) same++;
		}
		return all > 0 ? same / all : 0;
	};
}

function textAt({ rows }: TextTable, row: number, at: number): string {
	return (rows[row] as readonly string[])[at]?.trim() ?? "";
}
