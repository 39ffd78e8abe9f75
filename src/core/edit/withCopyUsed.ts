import { textsOf } from "../read/textsOf.ts";
import { roundsSheet } from "../sheets/rounds.ts";
import { unitSheet } from "../sheets/unit.ts";
import { type Workbook, withTable } from "../workbook.ts";
import type { KeptCopy } from "./keptCopies.ts";
import { periodSettings } from "./periodSettings.ts";

/** The workbook with the settings and rounds of a copy in place of its own, over the same days. */
export function withCopyUsed(workbook: Workbook, copy: KeptCopy): Workbook {
	return withRounds(withSettings(workbook, copy), copy);
}

function withSettings(workbook: Workbook, copy: KeptCopy): Workbook {
	const wanted = new Map(
		copy.rows.flatMap(({ value }) =>
			value.of === "setting" && !periodSettings.includes(value.key)
				? [[value.key, value.value] as const]
				: [],
		),
	);
	const unit = textsOf(workbook, unitSheet);
	const keyOf = (row: readonly string[]) => unit.cell(row, "key").trim();
	const keys = new Set(unit.rows.map(keyOf));
	const changed = unit.rows.map((row) => {
		const value = wanted.get(keyOf(row));
		return value === undefined ? row : unit.row(row, { value });
	});
	const fresh = [...wanted]
		.filter(([key, value]) => !keys.has(key) && value !== "")
		.map(([key, value]) => unit.row(undefined, { key, value }));
	return withTable(workbook, unitSheet.file, {
		header: unit.header,
		rows: [...changed, ...fresh],
	});
}

/** A round that stays at its time keeps whatever else stands in its row. */
function withRounds(workbook: Workbook, copy: KeptCopy): Workbook {
	const wanted = copy.rows.filter(({ value }) => value.of === "round");
	if (wanted.length === 0) return workbook;
	const rounds = textsOf(workbook, roundsSheet);
	const rows = wanted
		.filter(({ value }) => value.key !== "" || value.value !== "")
		.map(({ value: { key, value: label } }) => {
			const before = rounds.rows.find((row) => rounds.cell(row, "start").trim() === key);
			return rounds.row(before, { start: key, label });
		});
	return withTable(workbook, roundsSheet.file, { header: rounds.header, rows });
}
