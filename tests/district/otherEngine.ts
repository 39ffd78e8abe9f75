import { readFileSync } from "node:fs";
import { DuckDBInstance } from "@duckdb/node-api";

/** The script of the manual, run as it stands there over the lists of a district. */
const SCRIPT = readFileSync("docs/manual/units.sql", "utf8");

export type Row = Record<string, unknown>;

/** The rows of every question of the script, asked from the folder of the lists. */
export async function rowsOfScript(folder: string): Promise<Row[][]> {
	const instance = await DuckDBInstance.create(":memory:");
	const connection = await instance.connect();
	await connection.run(`SET file_search_path = '${folder}'`);
	const statements = SCRIPT.replace(/^--.*$/gm, "").split(/;\s*$/m);
	const rows: Row[][] = [];
	for (const statement of statements.filter((text) => text.trim() !== "")) {
		const reader = await connection.runAndReadAll(statement);
		if (!statement.includes("CREATE")) rows.push(reader.getRowObjectsJson());
	}
	connection.closeSync();
	instance.closeSync();
	return rows;
}
