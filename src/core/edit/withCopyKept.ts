import { textsOf } from "../read/textsOf.ts";
import { keptSettingsSheet } from "../sheets/keptSettings.ts";
import { roundsSheet } from "../sheets/rounds.ts";
import { settings } from "../sheets/settings.ts";
import { unitSheet } from "../sheets/unit.ts";
import { type Workbook, withTable } from "../workbook.ts";

/**
 * The workbook with a copy of settings and rounds kept under a name: its own, or those of another one.
 *
 * Texts are kept as typed. A setting without a row is kept blank, and a day without
 * a round by one blank round, so that taking the copy back restores that too.
 */
export function withCopyKept(workbook: Workbook, name: string, of = workbook): Workbook {
	const kept = textsOf(workbook, keptSettingsSheet);
	const rows = [...settingsOf(of), ...roundsOf(of)].map((row) =>
		kept.row(undefined, { name, ...row }),
	);
	return withTable(workbook, keptSettingsSheet.file, {
		header: kept.header,
		rows: [...kept.rows, ...rows],
	});
}

function settingsOf(workbook: Workbook) {
	const unit = textsOf(workbook, unitSheet);
	const typed = unit.rows.map((row) => ({
		of: "setting",
		key: unit.cell(row, "key").trim(),
		value: unit.cell(row, "value"),
	}));
	const keys = new Set(typed.map(({ key }) => key));
	const absent = Object.keys(settings).filter((key) => !keys.has(key));
	return [
		...typed.filter(({ key }) => key !== ""),
		...absent.map((key) => ({ of: "setting", key, value: "" })),
	];
}

function roundsOf(workbook: Workbook) {
	const rounds = textsOf(workbook, roundsSheet);
	const typed = rounds.rows.map((row) => ({
		of: "round",
		key: rounds.cell(row, "start").trim(),
		value: rounds.cell(row, "label"),
	}));
	const listed = typed.filter(({ key, value }) => key !== "" || value.trim() !== "");
	return listed.length > 0 ? listed : [{ of: "round", key: "", value: "" }];
}
