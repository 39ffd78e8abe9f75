import type { TextTable } from "../workbook.ts";

/**
 * The columns of a table by names of their own: two of one name are told apart, and cells
 * beyond the header have a name as well, so that none of them is left out.
 *
 * @example columnNames({ header: ["day ", "day"], rows: [["", "", "stray"]] }) // ["day", "day\n2", "\n3"]
 */
export function columnNames({ header, rows }: TextTable): string[] {
	const names = header.map((key, at) => {
		const name = key.trim();
		const isFirst = name !== "" && header.findIndex((other) => other.trim() === name) === at;
		return isFirst ? name : `${name || "?"}\n${at + 1}`;
	});
	let width = header.length;
	for (const row of rows) if (row.length > width) width = row.length;
	for (let at = header.length; at < width; at++) names.push(`\n${at + 1}`);
	return names;
}

/** Whether it is a cell beyond the header that has this name. */
export function isStray(name: string): boolean {
	return name.startsWith("\n");
}
