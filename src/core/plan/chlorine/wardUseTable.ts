import { typedFigure } from "../../calculation.ts";
import { type ComputedTable, onDemand } from "../../computedTable.ts";
import { say } from "../../say.ts";
import { wardSolutionSheet } from "../../sheets/wardSolution.ts";
import { wardUseSheet } from "../../sheets/wardUse.ts";
import { preparationCells } from "./preparationCells.ts";
import type { WardUse } from "./wardFigures.ts";

/** Each other use of solution with its product. */
export function wardUseTable(uses: readonly WardUse[]): ComputedTable<typeof wardUseSheet> {
	return onDemand(wardUseSheet, () =>
		uses.map(({ line, use, litres, firstDay, quantity }) => {
			const { litres: _made, ...cells } = preparationCells(firstDay);
			const place = { file: wardSolutionSheet.file, line, column: "use" };
			return {
				use: typedFigure(say`Used for`, "", use, place),
				litres_per_day: litres,
				...cells,
				plan_quantity: quantity,
			};
		}),
	);
}
