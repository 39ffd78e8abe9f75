import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { wardUseSheet } from "../../sheets/wardUse.ts";
import { preparationCells } from "./preparationCells.ts";
import type { WardUse } from "./wardUses.ts";

/** Each other use of solution with its product. */
export function wardUseTable(uses: readonly WardUse[]): ComputedTable<typeof wardUseSheet> {
	return onDemand(wardUseSheet, () =>
		uses.map(({ name, litres, firstDay, quantity }) => {
			const { litres: _made, ...cells } = preparationCells(firstDay);
			return {
				use: name,
				litres_per_day: litres,
				...cells,
				plan_quantity: quantity,
			};
		}),
	);
}
