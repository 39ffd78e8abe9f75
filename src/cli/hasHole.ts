import { problemsOf } from "../core/outcome.ts";
import type { Plan } from "../core/plan/plan.ts";
import type { Problem } from "../core/problem.ts";

/**
 * Whether some number of any sheet waits for a text that cannot be understood. What the day
 * plan does without, such as when to light the stove, is a hole in what is written all the same.
 *
 * @param typed the problems of what was typed
 */
export function hasHole({ tables }: Pick<Plan, "tables">, typed: readonly Problem[]): boolean {
	const wrong = new Set(typed.filter(({ weight }) => weight === "error"));
	if (wrong.size === 0) return false;
	return Object.values(tables).some(({ sheet, rows }) =>
		rows.some((row) =>
			Object.keys(sheet.columns).some((column) => {
				const cell = row[column];
				return cell && problemsOf(cell.outcome).some((problem) => wrong.has(problem));
			}),
		),
	);
}
