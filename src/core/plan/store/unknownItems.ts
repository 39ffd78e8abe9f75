import { problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { type UsageRow, usageSheet } from "../../sheets/usage.ts";
import type { UnitFigures } from "../unitFigures.ts";

/** Lines of usage.csv whose item is not in the store's list. */
export function unknownItems({ usage, items }: UnitFigures["read"]["tables"]) {
	const known = new Set([...items.rows, ...items.badRows].map(({ value }) => value.item));
	return usage.rows
		.filter(({ value }) => !known.has(value.item))
		.map(({ line, value }: GoodRow<UsageRow>) =>
			problem(
				{ file: usageSheet.file, line, column: "item" },
				{
					code: "unknown-item",
					received: value.item,
					allowed: say`an item listed in ${itemsSheet.file}`,
					message: say`"${value.item}" is not among the items of the store, so its use is not planned.`,
				},
			),
		);
}
