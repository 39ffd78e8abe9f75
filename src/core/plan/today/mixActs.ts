import type { ComputedRow } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import type { Settings } from "../../read/readSettings.ts";
import { dayPlanSheet } from "../../sheets/dayPlan.ts";
import { mixingDaysSheet } from "../../sheets/mixingDays.ts";
import { MINUTES_PER_HOUR } from "../../values/clock.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import type { MixAct, RoundAct } from "./act.ts";
import { minutesBetween } from "./minutesBetween.ts";

type DayRow = ComputedRow<typeof dayPlanSheet>;

/** One preparation for each round, or once a day and again for a round after the solution's life. */
export function mixActs(plan: Plan, settings: Settings, rounds: readonly RoundAct[]): MixAct[] {
	const made = valueIn(settings.solution_made);
	const lifeHours = valueIn(settings.solution_life_hours);
	const water = valueIn(settings.solution_water);
	if (made === undefined || lifeHours === undefined || water === undefined) return [];
	const [first] = rowsOf(plan, dayPlanSheet);
	const days = new Map(rowsOf(plan, mixingDaysSheet).map((row) => [valueIn(row.date), row]));
	let last: RoundAct["at"] | undefined;
	return rounds.flatMap((round) => {
		const soak = round.steps.find(({ isSoak }) => isSoak);
		const row = days.get(round.at.date);
		if (!row) return [];
		const isGood =
			last?.date === round.at.date && minutesBetween(last, round.at) < lifeHours * MINUTES_PER_HOUR;
		if (made === "each_day" && isGood) return [];
		const [litres, quantity, waterLitres] = [
			valueIn(row.litres),
			valueIn(row.product_quantity),
			valueIn(row.water_litres),
		];
		if (typeof litres !== "number" || typeof quantity !== "number") return [];
		if (typeof waterLitres !== "number") return [];
		last = round.at;
		return [
			{
				kind: "mix",
				at: round.at,
				// Mixed for wiping alone, it is wanted as the round begins.
				until: soak?.from ?? round.at,
				round: round.round,
				product: valueIn((first as DayRow).chlorine_product) as string,
				lot: valueIn(row.lot) ?? "",
				litres,
				quantity,
				measure: valueIn(row.product_measure) ?? "",
				waterLitres,
				isOfBoiledWater: water === "boiled",
			} as const,
		];
	});
}
