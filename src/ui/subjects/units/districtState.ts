import type { Problem } from "../../../core/problem.ts";
import { districtNamesSheet } from "../../../core/sheets/districtNames.ts";
import { districtStockSheet } from "../../../core/sheets/districtStock.ts";
import { type ItemNames, itemNames } from "../../../core/units/itemNames.ts";
import { storeStock } from "../../../core/units/storeStock.ts";
import { breath } from "../../dom/breath.ts";
import { inPieces } from "../../dom/inPieces.ts";
import type { District, DistrictSums } from "./district.ts";
import { type DistrictLine, districtLines } from "./districtLines.ts";
import { readDistrictText } from "./readDistrictText.ts";
import { saidOnce } from "./unitsNotInSums.ts";

/** What the page has of a district, with the tables of its own as they were typed. */
export interface DistrictState {
	readonly district: District;
	readonly sums: DistrictSums;
	readonly nameOf: ItemNames;
	readonly names: string;
	readonly stock: string;
	/** What concerns several units or none. */
	readonly problems: readonly Problem[];
}

/** Adds a district's orders up; undefined where a line of its own tables is not understood. */
export async function districtState(
	district: District,
	names: string,
	stock: string,
): Promise<DistrictState | undefined> {
	const readNames = readDistrictText(districtNamesSheet, names);
	const readStock = readDistrictText(districtStockSheet, stock);
	if (!readNames.isRead || !readStock.isRead) return undefined;
	const nameOf = itemNames(readNames.rows.rows.map(({ value }) => value));
	const sums = await inPieces(district.sums(nameOf, storeStock(readStock.rows, nameOf)), breath());
	const problems = [...district.problems, ...sums.problems];
	return { district, sums, nameOf, names, stock, problems };
}

/** The order's items, as a person reads them below the notes. */
export function linesOf({ district, sums, nameOf }: DistrictState): DistrictLine[] {
	return districtLines(sums.table, saidOnce(district.units, nameOf));
}
