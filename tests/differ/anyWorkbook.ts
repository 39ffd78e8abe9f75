import type { Sheet } from "../../src/core/sheet.ts";
import { settings } from "../../src/core/sheets/settings.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { useKinds } from "../../src/core/sheets/uses.ts";
import { addDays } from "../../src/core/values/date.ts";
import type { TextTable, Workbook } from "../../src/core/workbook.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";
import { anyCell, oneOf, type Random, START, whole } from "./anyCell.ts";

/** Sheets of which some things of the others are named, in the order in which they are made. */
const FIRST = ["kinds.csv", "kits.csv", "items.csv", "chlorine.csv", "lots.csv"];
/** Settings without which hardly any plan would be made, or whose text says nothing of its own. */
const GIVEN: Readonly<Record<string, string>> = {
	unit_name: "Any unit",
	plan_start: START,
	cooling_first_c: "",
	cooling_second_c: "",
	cooling_hours: "",
	last_descaled_on: "",
};

type Rows = Record<string, Record<string, string>[]>;

/** A workbook, any that the limits of the columns allow; the same for the same number. */
export function anyWorkbook(number: number): Workbook {
	const random = randomNumbers(number);
	const rows: Rows = {};
	const inOrder = [...typedSheets].sort((a, b) => placeOf(a) - placeOf(b));
	for (const sheet of inOrder) {
		if (sheet.optional && random() < 0.5) continue;
		const made = sheet.file === "unit.csv" ? unitRows(random) : rowsOf(random, sheet, rows);
		rows[sheet.file] = distinct(sheet, made);
		if (sheet.file === "chlorine.csv") inUse(rows[sheet.file] ?? []);
	}
	return { tables: Object.fromEntries(typedSheets.flatMap((sheet) => tableOf(sheet, rows))) };
}

const placeOf = ({ file }: Sheet) => (FIRST.includes(file) ? FIRST.indexOf(file) : FIRST.length);

/** Mostly few rows, now and then very many. */
function countOf(random: Random, { file }: Sheet): number {
	if (file === "steps.csv") return whole(random, 1, 8);
	if (file === "rounds.csv") return random() < 0.8 ? whole(random, 1, 5) : whole(random, 6, 24);
	if (file === "kinds.csv") return random() < 0.8 ? whole(random, 1, 6) : whole(random, 6, 60);
	if (file === "kits.csv") return random() < 0.8 ? whole(random, 0, 15) : whole(random, 15, 100);
	if (file === "hours.csv") return 24;
	return random() < 0.9 ? whole(random, 0, 12) : whole(random, 12, 300);
}

function rowsOf(random: Random, sheet: Sheet, known: Rows): Record<string, string>[] {
	return Array.from({ length: countOf(random, sheet) }, (_, i) => {
		const cells = Object.entries(sheet.columns).map(([key, column]) => [
			key,
			anyCell(random, { ...column, key }),
		]);
		return { ...Object.fromEntries(cells), ...namesOf(random, sheet.file, i, known) };
	});
}

/** The names in a row: its own, and those by which it speaks of rows elsewhere. */
function namesOf(random: Random, file: string, i: number, known: Rows): Record<string, string> {
	const rowOf = (of: string) => oneOf(random, known[of] ?? []) ?? {};
	const { kind = "kind 0" } = rowOf("kinds.csv");
	const { item = "item 0" } = rowOf("items.csv");
	const { kit = "K0" } = rowOf("kits.csv");
	const lot = rowOf("lots.csv");
	const piece = rowOf("kinds.csv");
	switch (file) {
		case "kinds.csv":
			return { kind: `kind ${Math.floor(i / whole(random, 1, 4))}`, piece: `piece ${i}` };
		case "kits.csv":
			return { kit: `K${i}`, kind };
		case "items.csv":
			return { item: random() < 0.1 ? `piece ${i}` : `item ${i}`, measure: measure(random) };
		case "chlorine.csv":
			return { product: item, in_use: "no", ...strength(random), label_confirmed: "yes" };
		case "births.csv":
			return { date: addDays(START, whole(random, 0, 40)) };
		case "records.csv":
		case "past-plans.csv":
			return { date: addDays(START, -whole(random, 1, 400)) };
		case "usage.csv":
			return { item };
		case "placed.csv":
			return { item, ...received(random) };
		case "lots.csv":
			return { item, lot: `L${i}`, made_on: "", received_on: "", arrives_on: "" };
		case "journal.csv":
		case "strength-readings.csv":
			return {
				item: lot.item ?? item,
				lot: lot.lot ?? "L0",
				...before(random, ["day", "read_on"]),
			};
		case "treatments.csv":
		case "kind-use.csv":
			return { kind: piece.kind ?? kind, piece: piece.piece ?? "", use: "" };
		case "steps.csv":
			return { step: `step ${i}` };
		case "hours.csv":
			return { hour: String(i) };
		case "checks.csv":
			return { kit, pieces_counted: "", checked_at: moment(random) };
		case "uses.csv": {
			const what = oneOf(random, useKinds);
			return { at: moment(random), what, kit: what === "none_ready" ? "" : kit };
		}
		case "rounds-done.csv":
			return {
				kits: kit,
				product: lot.item ?? "",
				lot: lot.lot ?? "",
				...before(random, ["date"]),
				soak_in: "",
				soak_out: "",
				ended: "",
			};
		case "kept-settings.csv":
			return { of: "setting", key: "plan_days", value: String(whole(random, 1, 14)) };
		default:
			return {};
	}
}

/** Exactly one product is in use. */
function inUse([first]: Record<string, string>[]): void {
	if (first) first.in_use = "yes";
}

/** Days before the plan, under the names of columns. */
const before = (random: Random, names: readonly string[]) =>
	Object.fromEntries(names.map((name) => [name, addDays(START, -whole(random, 1, 60))]));
const moment = (random: Random) =>
	`${addDays(START, -whole(random, 1, 60))} ${String(whole(random, 0, 23)).padStart(2, "0")}:00`;

/** Half of the orders are on the way. */
function received(random: Random) {
	const ordered = -whole(random, 10, 60);
	const came = random() < 0.5;
	return {
		ordered_on: addDays(START, ordered),
		expected_on: random() < 0.5 ? "" : addDays(START, ordered + whole(random, 0, 60)),
		received_on: came ? addDays(START, ordered + whole(random, 1, 9)) : "",
		packs_received: "",
		lot: came ? `L${whole(random, 0, 400)}` : "",
	};
}

const strength = (random: Random) =>
	oneOf(random, [
		{ form: "liquid", strength: "3.5", strength_measure: "pct_w_v" },
		{ form: "liquid", strength: "60", strength_measure: "g_per_l" },
		{ form: "powder", strength: "65", strength_measure: "pct_w_w" },
		{ form: "tablet", strength: "1.5", strength_measure: "g_per_tablet" },
	]);

const measure = (random: Random) =>
	oneOf(random, ["piece", "pair", "mL", "L", "g", "kg", "tablet"]);

/** Some of the settings; those left out mean their fallback. */
function unitRows(random: Random): Record<string, string>[] {
	const share = random();
	return Object.entries(settings).flatMap(([key, setting]) => {
		const given = GIVEN[key];
		if (given === undefined && key !== "births_per_day" && random() > share) return [];
		return [{ key, value: given ?? anyCell(random, { ...setting, key }) }];
	});
}

/** Without rows that have the name of one before. */
function distinct({ unique }: Sheet, rows: Record<string, string>[]): Record<string, string>[] {
	if (!unique) return rows;
	const nameOf = (row: Record<string, string>) => unique.map((key) => row[key]).join("\n");
	return [...new Map(rows.map((row) => [nameOf(row), row])).values()];
}

function tableOf({ file, columns }: Sheet, rows: Rows): [string, TextTable][] {
	const header = Object.keys(columns);
	const own = rows[file];
	if (!own) return [];
	return [[file, { header, rows: own.map((row) => header.map((key) => row[key] ?? "")) }]];
}
