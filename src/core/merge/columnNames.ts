import type { TextTable } from "../workbook.ts";

/**
 * The columns of a table by names of their own: two of one name are told apart, and cells
 * beyond the header have a name as well, so that none of them is left out.
 *
 * They are numbered among their like and not by their place, which is another one in a
 * table that has taken a column from elsewhere.
 *
 * @example columnNames({ header: ["day ", "day", ""], rows: [["", "", "", "stray"]] }) // ["day", "day\n2", "?\n1", "\n1"]
 */
export function columnNames({ header, rows }: TextTable): string[] {
	const times = new Map<string, number>();
	const names = header.map((key) => {
		const name = key.trim();
		const time = (times.get(name) ?? 0) + 1;
		times.set(name, time);
		return name !== "" && time === 1 ? name : `${name || "?"}\n${time}`;
	});
	let width = header.length;
	for (const row of rows) width = Math.max(width, row.length);
	for (let beyond = 1; beyond <= width - header.length; beyond++) names.push(`\n${beyond}`);
	return names;
}

/** Whether it is a cell beyond the header that has this name. */
export function isStray(name: string): boolean {
	return name.startsWith("\n");
}
