import type { RowOf } from "../../../core/sheet.ts";
import { districtNamesSheet } from "../../../core/sheets/districtNames.ts";
import { districtStockSheet } from "../../../core/sheets/districtStock.ts";
import { unitsSheet } from "../../../core/sheets/units.ts";
import { unitsNeedsSheet } from "../../../core/sheets/unitsNeeds.ts";
import { unitsOrderSheet } from "../../../core/sheets/unitsOrder.ts";
import { unitsProblemsSheet } from "../../../core/sheets/unitsProblems.ts";
import type { ItemNames } from "../../../core/units/itemNames.ts";
import { hasNeed, needOf } from "../../../core/units/needOf.ts";
import { computedLines } from "../../../io/computedCsv.ts";
import { begunFiles } from "../../../io/district/begunFiles.ts";
import { problemLines } from "../../../io/district/problemLines.ts";
import { csvLines } from "../../../io/writeCsv.ts";
import { zipFiles } from "../../../io/zipFiles.ts";
import type { DistrictState } from "./districtState.ts";
import type { HeldUnit } from "./heldUnit.ts";
import { withHeader } from "./readDistrictText.ts";

/** The district's lists as the command line writes them, and its own two tables, in one zip. */
export function districtLists(state: DistrictState): Uint8Array {
	const { district, sums, nameOf } = state;
	const begun = begunFiles([unitsSheet, unitsNeedsSheet, unitsOrderSheet, unitsProblemsSheet]);
	const lines: Record<string, string> = {
		[unitsSheet.file]: csvLines(district.units.map(({ row }) => written(unitsSheet, row))),
		[unitsNeedsSheet.file]: csvLines(district.units.flatMap((unit) => needRows(unit, nameOf))),
		[unitsOrderSheet.file]: computedLines(sums.table),
		[unitsProblemsSheet.file]:
			district.units.map(({ problems }) => problems).join("") +
			problemLines({ unit: "", path: "" }, state.problems),
	};
	const own = {
		[districtNamesSheet.file]: withHeader(districtNamesSheet, state.names),
		[districtStockSheet.file]: withHeader(districtStockSheet, state.stock),
	};
	const texts = [
		...Object.entries(begun).map(([file, text]) => [file, text + (lines[file] ?? "")] as const),
		...Object.entries(own).filter(([, text]) => text !== ""),
	];
	const encoder = new TextEncoder();
	return zipFiles(Object.fromEntries(texts.map(([file, text]) => [file, encoder.encode(text)])));
}

type NeedRow = RowOf<typeof unitsNeedsSheet>;

function needRows({ row, orders }: HeldUnit, nameOf: ItemNames): string[][] {
	return orders.map((order): string[] => {
		const need: NeedRow = {
			...order,
			unit: row.unit,
			path: row.path,
			item: nameOf(order.item),
			item_as_written: order.item,
			need: hasNeed(order) ? needOf(order) : null,
		};
		return written(unitsNeedsSheet, need);
	});
}

function written(
	{ columns }: typeof unitsSheet | typeof unitsNeedsSheet,
	row: Readonly<Record<string, unknown>>,
): string[] {
	return Object.entries(columns).map(([key, { value }]) => {
		const cell = row[key];
		if (cell === null || cell === undefined) return "";
		return typeof cell === "string" ? cell : (value.write as (of: unknown) => string)(cell);
	});
}
