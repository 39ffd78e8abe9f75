import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { Chance } from "../fuzz/chance.ts";
import { poissonDraw } from "../reference/draws.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";

const SAMPLE = join(import.meta.dirname, "../../sample-csv");
const sample = Object.fromEntries(
	readdirSync(SAMPLE)
		.filter((name) => name.endsWith(".csv"))
		.map((name) => [name, readFileSync(join(SAMPLE, name), "utf8")]),
);

/** How often a unit calls gauze by a name of its own, is a week ahead, or counts nothing. */
const ONCE_IN = { otherName: 4, weekAhead: 10, noStock: 25 };
export const OTHER_NAME = "Gauze 10 x 10";

export function unitName(seed: number): string {
	return `Unit ${String(seed).padStart(6, "0")}`;
}

/**
 * The sample workbook as an invented unit of its own: other births, kits, stock and names,
 * the same from the same seed.
 */
export function inventedUnit(seed: number): Record<string, string> {
	const chance = new Chance(seed + 1);
	const random = randomNumbers(seed + 1);
	const births = 1 + chance.below(100) / 8;
	const files = { ...sample };
	const change = (name: string, from: string | RegExp, to: (...found: string[]) => string) => {
		files[name] = (files[name] as string).replace(from, to);
	};
	change("unit.csv", /^unit_name,.*$/m, () => `unit_name,${unitName(seed)}`);
	change("unit.csv", /^births_per_day,.*$/m, () => `births_per_day,${births}`);
	if (chance.once(ONCE_IN.weekAhead))
		change("unit.csv", "plan_start,2027-03-01", () => "plan_start,2027-03-08");
	change(
		"records.csv",
		/^(\d{4}-\d\d-\d\d),\d+,\d*\r?$/gm,
		(_, day = "") => `${day},${poissonDraw(births, random)},`,
	);
	const kits = chance.below(4);
	files["kits.csv"] = (files["kits.csv"] as string).replaceAll(/^K\d.*\n/gm, (line) =>
		Number(line[1]) <= 6 - kits ? line : line.replace("in_service", "out_of_service"),
	);
	const scale = chance.once(ONCE_IN.noStock) ? 0 : chance.below(200) / 100;
	change(
		"lots.csv",
		/^((?:"[^"]*"|[^,\n]*),[^,\n]*),(\d+),/gm,
		(_, lot = "", held = "") => `${lot},${Math.round(Number(held) * scale)},`,
	);
	if (chance.once(ONCE_IN.otherName))
		for (const name of ["items.csv", "usage.csv", "lots.csv", "placed.csv"])
			files[name] = (files[name] as string).replaceAll("Gauze swab", OTHER_NAME);
	return files;
}

/** Writes a unit as a folder, or as a zip where the name ends so. */
export function writeUnit(path: string, files: Readonly<Record<string, string>>): void {
	if (path.endsWith(".zip")) {
		mkdirSync(dirname(path), { recursive: true });
		writeFileSync(path, zipTexts(files));
		return;
	}
	mkdirSync(path, { recursive: true });
	for (const [name, text] of Object.entries(files)) writeFileSync(join(path, name), text);
}
