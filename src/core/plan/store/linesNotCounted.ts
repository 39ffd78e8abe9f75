import { advice, type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { type UsageRow, usageSheet } from "../../sheets/usage.ts";
import { wardSolutionSheet } from "../../sheets/wardSolution.ts";
import { nameInUse } from "../chlorine/nameInUse.ts";
import type { UnitFigures } from "../unitFigures.ts";

/** Lines of usage.csv that the plan does not count: of an item that is not in the store's list, and of the product in use. */
export function linesNotCounted(tables: UnitFigures["read"]["tables"]): Problem[] {
	return [...unknownItems(tables), ...ofProductInUse(tables)];
}

/** What rounds take of the product follows from its dose. */
function ofProductInUse(tables: UnitFigures["read"]["tables"]): Problem[] {
	const inUse = nameInUse(tables);
	return tables.usage.rows
		.filter(({ value }) => value.item === inUse)
		.map(({ line, value: { item } }) =>
			advice(
				{ file: usageSheet.file, line, column: "item" },
				{
					code: "use-of-product",
					received: item,
					allowed: say`no line for the chlorine product in use`,
					message: say`${item} is the chlorine product in use: what rounds take of it follows from its dose, so this line is not counted. What goes to the ward besides belongs under “${wardSolutionSheet.title}”.`,
				},
			),
		);
}

/** Lines whose item is not in the store's list. */
function unknownItems({ usage, items }: UnitFigures["read"]["tables"]): Problem[] {
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
