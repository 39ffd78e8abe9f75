import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Workbook } from "../../src/core/workbook.ts";
import { readFiles } from "../../src/io/readFiles.ts";
import { MILLISECONDS_PER_DAY } from "./longUnit.ts";

const DAYS = 366;
const PLAN_START = Date.UTC(2027, 2, 1);
const sample = join(import.meta.dirname, "../../sample-csv");

/** What makes the demo a year's workbook: a plan of a year, forecast from a register of the year before. */
export const yearChanges = {
	settings: { plan_days: String(DAYS) },
	sheets: { "records.csv": register(), "births.csv": "date,births,note\n" },
} as const;

/** The demo as a year's workbook. */
export function yearWorkbook(): Workbook {
	const names = readdirSync(sample).filter((name) => name.endsWith(".csv"));
	const files = names.map((name) => {
		const text = readFileSync(join(sample, name), "utf8");
		const changed: Readonly<Record<string, string>> = {
			...yearChanges.sheets,
			"unit.csv": text.replace(/^plan_days,.*$/m, `plan_days,${DAYS}`),
		};
		return { name, bytes: new TextEncoder().encode(changed[name] ?? text) };
	});
	return readFiles(files).workbook;
}

/** Invented births and uses; every day another count, so that no two days of the plan need be alike. */
function register(): string {
	const lines = Array.from({ length: DAYS }, (_, day) => {
		const date = new Date(PLAN_START - (DAYS - day) * MILLISECONDS_PER_DAY);
		const births = 3 + ((day * 7919) % 7) + (day % 7 < 5 ? 1 : 0);
		return `${date.toISOString().slice(0, 10)},${births},${day % 3 === 0 ? 1 : 0}`;
	});
	return ["date,births,kits_used", ...lines, ""].join("\n");
}
