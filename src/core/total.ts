import { type Calculation, calculation } from "./calculation.ts";
import { say } from "./say.ts";
import { definition } from "./source.ts";
import { sumOfAll } from "./sumOfAll.ts";

interface Addition {
	readonly parts: readonly number[];
}

/** Several amounts of the same thing, added up. */
export function total(key: string, label: string, unit: string): Calculation<Addition, number> {
	return calculation<Addition, number>({
		key,
		label,
		unit,
		formula: say`All of them added up.`,
		source: definition,
		inputs: { parts: { label: say`Parts`, unit } },
		example: { inputs: { parts: [3, 0, 2.5] }, result: 5.5, within: 0 },
		compute: ({ parts }) => sumOfAll(parts),
	});
}
