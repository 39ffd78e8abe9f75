import type { Column } from "../../core/column.ts";
import { type NewText, tableOf } from "../../core/edit/withTexts.ts";
import { say } from "../../core/say.ts";
import { type SettingKey, settingGroups, settings } from "../../core/sheets/settings.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { lineOf } from "../../core/workbook.ts";
import { shownDefault } from "../format/shownDefault.ts";
import { shownTyped } from "../format/shownTyped.ts";
import { problemsAt } from "../sheet/problemsAt.ts";
import type { State } from "../state/store.ts";
import type { CellText, GridCell, GridColumn, GridModel } from "./gridModel.ts";
import { isNarrowScreen } from "./isNarrowScreen.ts";
import { headHeight, ONE_LINE_PX } from "./rowHeights.ts";

const LETTER_PX = 9;
const LINE_PX = 17;
const EDGES_PX = 14;
export const VALUE_COLUMN = 1;

const columns: readonly GridColumn[] = [
	{ key: "label", label: say`Setting`, unit: "", numeric: false, width: 350 },
	{ key: "value", label: say`Here`, unit: say`blank: the default`, numeric: true, width: 190 },
	{ key: "unit", label: say`Unit`, unit: "", numeric: false, width: 168 },
	{ key: "default", label: say`Default`, unit: "", numeric: true, width: 158 },
];
/** On a phone a setting and its value still stand side by side; a long name takes some lines. */
const NARROW_PX = [172, 152];

interface SettingRow {
	/** "" for the name of a subject, which stands over its settings. */
	readonly key: string;
	readonly heading?: string;
	/** Row of unit.csv, where the setting stands there. */
	readonly row: number | undefined;
	readonly column: Column<unknown> | undefined;
}

/** Every setting under the name of its subject, then whatever else the file names. */
function settingRows(state: State): readonly SettingRow[] {
	const table = tableOf(state.workbook, unitSheet.file);
	const at = table.header.indexOf("key");
	const keys = table.rows.map((cells) => (cells[at] ?? "").trim());
	const known = settingGroups.flatMap(({ title, keys: ofGroup }): SettingRow[] => [
		{ key: "", heading: title, row: undefined, column: undefined },
		...ofGroup.map((key) => {
			const row = keys.indexOf(key);
			const column = settings[key as SettingKey] as Column<unknown>;
			return { key, row: row < 0 ? undefined : row, column };
		}),
	]);
	const others = keys.flatMap((key, row) =>
		key === "" || (Object.hasOwn(settings, key) && keys.indexOf(key) === row)
			? []
			: [{ key, row, column: undefined }],
	);
	return [...known, ...others];
}

/** True for a value that differs from the default it stands over. */
function isOwn(text: string, column: Column<unknown> | undefined): boolean {
	if (text.trim() === "" || column?.fallback === undefined) return false;
	return text.trim() !== column.value.write(column.fallback);
}

/** The unit's settings as a form: name, value, unit, default. Only the value can be edited. */
export function settingsGrid(state: State): GridModel {
	const table = tableOf(state.workbook, unitSheet.file);
	const valueAt = table.header.indexOf("value");
	const rows = settingRows(state);
	const problems = problemsAt(state.plan.found, unitSheet.file);
	const valueCell = ({ key, row, column }: SettingRow): GridCell => {
		const line = row === undefined ? null : lineOf(table, row);
		const text = row === undefined ? "" : (table.rows[row]?.[valueAt] ?? "");
		return {
			kind: "typed",
			text: shownTyped(text, column?.value),
			raw: text,
			own: isOwn(text, column),
			problems: [
				...problems(line, "value"),
				...(line === null ? [] : problems(line, "key")),
				...problems(null, key),
			],
			entry: {
				label: column?.label ?? key,
				unit: column?.unit ?? "",
				help: column?.help ?? say`This setting is not known here. It is kept and not used.`,
				allowed: column?.value.allowed ?? say`any text`,
				...(column?.value.options ? { options: column.value.options } : {}),
				...(column?.fallback === undefined ? {} : { blank: shownDefault(column) }),
			},
		};
	};
	const shown = isNarrowScreen()
		? columns.map((column, at) => ({ ...column, width: NARROW_PX[at] ?? column.width }))
		: columns;
	const nameLetters = (shown[0]?.width ?? 0) / LETTER_PX;
	return {
		name: unitSheet.title,
		columns: shown,
		rowCount: rows.length,
		headerHeight: headHeight(shown),
		rowHeight(at) {
			const { heading, column, key = "" } = rows[at] ?? {};
			const lines = Math.ceil((heading ?? column?.label ?? key).length / nameLetters);
			return Math.max(ONE_LINE_PX, EDGES_PX + LINE_PX * lines);
		},
		cell(at, column) {
			const row = rows[at];
			if (!row) return { kind: "label", text: "" };
			if (row.heading !== undefined)
				return { kind: "label", text: column === 0 ? row.heading : "", heading: true };
			if (column === VALUE_COLUMN) return valueCell(row);
			const { column: definition, key } = row;
			const fallback = definition?.fallback;
			const byDefault =
				definition === undefined || fallback === undefined ? "" : shownDefault(definition);
			const texts = [definition?.label ?? key, "", definition?.unit ?? "", byDefault];
			return { kind: "label", text: texts[column] ?? "" };
		},
	};
}

/** What to write into unit.csv for texts of the form: a setting that is not there yet gets its row. */
export function settingTexts(state: State, changes: readonly CellText[]): NewText[] {
	const rows = settingRows(state);
	let next = tableOf(state.workbook, unitSheet.file).rows.length;
	return changes.flatMap(({ row, column, text }) => {
		const setting = rows[row];
		if (!setting || setting.heading !== undefined || column !== VALUE_COLUMN) return [];
		if (setting.row !== undefined) return [{ row: setting.row, column: "value", text }];
		const at = next++;
		return [
			{ row: at, column: "key", text: setting.key },
			{ row: at, column: "value", text },
		];
	});
}

/** Keys of the settings in the order of the form; "" where the name of a subject stands. */
export function settingKeys(state: State): readonly string[] {
	return settingRows(state).map(({ key }) => key);
}

/** The row of the form that a place in unit.csv speaks of; the first where it names none. */
export function settingRowOf(state: State, line: number | null, column: string): number {
	const table = tableOf(state.workbook, unitSheet.file);
	const found = settingRows(state).findIndex(({ key, row }) =>
		line === null ? key === column : row !== undefined && lineOf(table, row) === line,
	);
	return Math.max(0, found);
}
