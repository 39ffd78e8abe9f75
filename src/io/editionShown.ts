import type { settings } from "../core/sheets/settings.ts";
import { unitSheet } from "../core/sheets/unit.ts";
import type { TextTable } from "../core/workbook.ts";
import { FORMAT } from "./migrated.ts";

/** Sheets, columns and settings that came with edition 3: workbook-format.md, Edition 3. */
const SHEETS = ["uses.csv", "rounds-done.csv", "placed.csv", "past-plans.csv", "treatments.csv"];
const COLUMNS: Readonly<Record<string, readonly string[]>> = {
	"checks.csv": ["purpose", "damage", "checked_by"],
	"kinds.csv": ["replace_after_rounds"],
	"kind-use.csv": ["beds", "spares"],
	"steps.csv": ["method"],
	"items.csv": ["shelf_life_days", "lead_days_spread"],
	"chlorine.csv": ["label_confirmed"],
};
const SETTINGS = [
	"renew_kits",
	"method",
	"solution_water",
	"dose_for_wet_kits",
	"settle_minutes",
	"boil_for",
	"boiled_water_hours",
	"boil_minutes_measured",
	"disinfect_boil_minutes",
	"disinfect_boil_litres",
	"boil_capacity_kits",
	"steam_minutes",
	"steam_litres",
	"steam_capacity_kits",
	"autoclave_turnaround_hours",
	"last_descaled_on",
	"soak_alone",
	"worker_hours_a_day",
	"product_drawn_by",
	"count_every_days",
	"prior_days",
] satisfies (keyof typeof settings)[];

/**
 * Edition of the file format of a workbook whose description names none: the first edition
 * named none, and a description that another program wrote anew has lost it. One sheet,
 * column or setting of edition 3 is enough, as no earlier program wrote any.
 */
export function editionShown(tables: Readonly<Record<string, TextTable>>): number {
	const keys = columnOf(tables[unitSheet.file], "key");
	const isOfThird =
		SHEETS.some((file) => file in tables) ||
		Object.entries(COLUMNS).some(([file, columns]) =>
			columns.some((column) => headerOf(tables[file]).includes(column)),
		) ||
		SETTINGS.some((key) => keys.includes(key));
	return isOfThird ? FORMAT : 1;
}

function headerOf(table: TextTable | undefined): readonly string[] {
	return table?.header.map((name) => name.trim()) ?? [];
}

function columnOf(table: TextTable | undefined, column: string): readonly string[] {
	const at = headerOf(table).indexOf(column);
	return table?.rows.map((cells) => cells[at]?.trim() ?? "") ?? [];
}
