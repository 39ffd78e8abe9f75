import type { textsOf } from "../../read/textsOf.ts";
import type { ProposedStep } from "../../rounds/proposedSteps.ts";
import { stepsSheet } from "../../sheets/steps.ts";

/** A proposed step as a row of the sheet of steps. */
export function proposedRow(
	steps: ReturnType<typeof textsOf>,
	{ step, basis, minutes, hands_on, method }: ProposedStep,
): string[] {
	return steps.row(undefined, {
		step,
		basis,
		minutes: stepsSheet.columns.minutes.value.write(minutes),
		hands_on,
		method: method ?? "",
	});
}
