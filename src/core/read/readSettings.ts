import { defaultFigure, type Figure, refusedFigure, typedFigure } from "../calculation.ts";
import { memoizeByObject } from "../memoize.ts";
import { firstReasons } from "../outcome.ts";
import { advice, type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";
import type { ValueOf } from "../sheet.ts";
import { settings } from "../sheets/settings.ts";
import { type SettingRow, unitSheet } from "../sheets/unit.ts";
import type { TextTable } from "../workbook.ts";
import { badCell } from "./cellProblems.ts";
import type { ReadTable } from "./goodRow.ts";
import { readTable } from "./readTable.ts";

type Definitions = typeof settings;

/** Every setting of the unit as a figure that knows whether it was typed or is the default. */
export type Settings = { readonly [K in keyof Definitions]: Figure<ValueOf<Definitions[K]>> };

export interface ReadSettings {
	readonly settings: Settings;
	readonly problems: readonly Problem[];
}

/**
 * Reads unit.csv. A blank or absent setting takes its default; one without a default has no
 * value. What an edit left alone is not read again: most of a page asks for some setting.
 */
export function readSettings(table: TextTable | undefined): ReadSettings {
	return readOnce(table ?? absent);
}

/** A sheet that no file was given for. */
const absent = {};

const readOnce = memoizeByObject((table: TextTable | typeof absent): ReadSettings => {
	const read = readTable(unitSheet, "rows" in table ? table : undefined);
	const figures = Object.fromEntries(
		Object.keys(settings).map((key) => [key, settingFigure(key as keyof Definitions, read)]),
	);
	const cells = Object.values(figures).flatMap((f) =>
		f.outcome.ok || f.outcome.problems[0]?.code === "not-given" ? [] : f.outcome.problems,
	);
	return {
		settings: figures as Settings,
		problems: [
			...read.problems,
			...read.badRows.flatMap((row) =>
				row.value.key && Object.hasOwn(settings, row.value.key) ? [] : row.problems,
			),
			...read.rows.flatMap((row) => unknownSetting(row.value, row.line)),
			...cells,
		],
	};
});

function settingFigure(key: keyof Definitions, read: ReadTable<SettingRow>): Figure<unknown> {
	const { label, unit, value, fallback } = settings[key] as (typeof settings)[typeof key] & {
		fallback?: unknown;
	};
	const nobody = { file: unitSheet.file, line: null, column: key };
	const doubled = read.badRows
		.filter((row) => row.value.key === key)
		.flatMap((row) => row.problems);
	if (doubled.length > 0) return refusedFigure(label, unit, nobody, ...firstReasons(doubled));
	const row = read.rows.find((r) => r.value.key === key);
	const place = { file: unitSheet.file, line: row?.line ?? null, column: "value" };
	const text = row?.value.value ?? "";
	if (text.trim() === "") {
		if (fallback !== undefined) return defaultFigure(label, unit, fallback, row ? place : nobody);
		return refusedFigure(label, unit, nobody, notGiven(key, label, value.allowed));
	}
	const checked = value.schema.safeParse(text);
	return checked.success
		? typedFigure(label, unit, checked.data as unknown, place)
		: refusedFigure(label, unit, place, badCell(place, label, text, value.allowed));
}

function notGiven(key: string, label: string, allowed: string): Problem {
	return problem(
		{ file: unitSheet.file, line: null, column: key },
		{
			code: "not-given",
			received: "",
			allowed,
			message: say`${label} is not given; enter ${allowed} as ${key} in the unit's settings.`,
		},
	);
}

function unknownSetting(row: SettingRow, line: number): Problem[] {
	if (Object.hasOwn(settings, row.key)) return [];
	return [
		advice(
			{ file: unitSheet.file, line, column: "key" },
			{
				code: "unknown-setting",
				received: row.key,
				allowed: say`one of the settings listed in the guide`,
				message: say`There is no setting called "${row.key}"; it is kept and not used.`,
			},
		),
	];
}
