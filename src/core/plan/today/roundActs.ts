import type { Figure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { momentAt } from "../../record/momentAt.ts";
import { isStep, soakStep } from "../../rounds/soakStep.ts";
import type { TimedStep } from "../../rounds/timedSteps.ts";
import { runSheetSheet } from "../../sheets/runSheet.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import type { RoundAct } from "./act.ts";

type Row = ComputedRow<typeof runSheetSheet>;

/** The rounds of the run sheet; one whose times wait for something is no act. */
export function roundActs(plan: Plan, { tables, settings }: ReadWorkbook): RoundAct[] {
	const soak = soakStep(
		// What pieces are boiled or steamed in is no soak, however long it takes.
		tables.steps.rows
			.map(({ value }) => value)
			.filter(({ method }) => (method ?? "chlorine") === "chlorine"),
		valueIn(settings.soak_minutes),
	);
	const seen = new Set<Figure<unknown>>();
	return rowsOf(plan, runSheetSheet).flatMap((row) => {
		// The rows of one round share the figure of its steps; the first row has what is said once.
		const timed = stepsBehind(row);
		if (!timed || seen.has(timed)) return [];
		seen.add(timed);
		const steps = valueIn(timed) ?? [];
		const [first, last] = [steps[0], steps.at(-1)];
		const date = valueIn(row.date) as IsoDate;
		if (!first || !last) return [];
		return [
			{
				kind: "round",
				at: momentAt(date, first.startsAt),
				until: momentAt(date, last.endsAt),
				round: valueIn(row.round) as string,
				kits: Math.max(...steps.map(({ kits }) => kits)),
				renew: valueIn(row.renew) ?? "",
				steps: steps.map(({ step, startsAt, endsAt, handsOn, method }) => ({
					step,
					from: momentAt(date, startsAt),
					until: momentAt(date, endsAt),
					isSoak: method === "chlorine" && isStep(step, soak),
					isHandsOn: handsOn === "yes",
				})),
			} as const,
		];
	});
}

function stepsBehind({ step }: Row): Figure<readonly TimedStep[]> | undefined {
	return step.origin.kind === "computed"
		? (step.origin.inputs.steps as Figure<readonly TimedStep[]> | undefined)
		: undefined;
}
