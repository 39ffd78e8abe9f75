import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import { isDoneFor } from "../../rounds/loads.ts";
import { say } from "../../say.ts";
import { stepsSheet } from "../../sheets/steps.ts";
import type { UnitFigures } from "../unitFigures.ts";

/** Where pieces are boiled or steamed, and no step of a load lasts as long as that asks. */
export function shortStepAdvice({ steps, loads, read: { settings } }: UnitFigures): Problem[] {
	const list = valueIn(steps);
	if (!list || list.length === 0) return [];
	return (valueIn(loads) ?? []).flatMap((load) => {
		const { method } = load;
		if (method === "chlorine") return [];
		const setting = method === "boiling" ? settings.disinfect_boil_minutes : settings.steam_minutes;
		const shortest = valueIn(setting);
		if (shortest === undefined) return [];
		const held = list
			.filter((step) => step.basis === "load" && isDoneFor(load, step.method))
			.map(({ minutes }) => minutes);
		if (held.some((minutes) => minutes >= shortest)) return [];
		return [
			advice(
				{ file: stepsSheet.file, line: null, column: "minutes" },
				{
					code: method === "boiling" ? "short-boil" : "short-steam",
					received:
						held.length === 0 ? say`no step counted by load` : say`${Math.max(...held)} minutes`,
					allowed: say`at least ${shortest} minutes`,
					message:
						method === "boiling"
							? say`No step counted by load keeps pieces at a rolling boil for ${shortest} minutes; look at the steps of a round.`
							: say`No step counted by load keeps pieces in steam for ${shortest} minutes; look at the steps of a round.`,
				},
			),
		];
	});
}
