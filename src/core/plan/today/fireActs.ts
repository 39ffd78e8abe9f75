import { valueIn } from "../../outcome.ts";
import { momentAt } from "../../record/momentAt.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import { dateTime } from "../../values/dateTime.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";
import type { FireAct, RoundAct } from "./act.ts";

const moment = dateTime().schema;

/** Every fire of the plan, on whatever day it is lit. */
export function fireActs(plan: Plan, rounds: readonly RoundAct[]): FireAct[] {
	return rowsOf(plan, boilingSheet).flatMap((row) => {
		const lit = moment.safeParse(valueIn(row.light_by) ?? "");
		const [litres, fuel] = [valueIn(row.start_litres), valueIn(row.fuel_quantity)];
		if (!lit.success || typeof litres !== "number" || typeof fuel !== "number") return [];
		const forDate = valueIn(row.date) ?? "";
		const round = valueIn(row.round) ?? "";
		const goal = rounds.find((each) => each.round === round && each.at.date === forDate);
		return [
			{
				kind: "fire",
				at: lit.data,
				until: goal?.at ?? momentAt(forDate, 0),
				round,
				forDate,
				litres,
				fuel,
				fuelMeasure: valueIn(row.fuel_measure) ?? "",
				pots: valueIn(row.pots) ?? "",
				onlyIf: valueIn(row.only_if) ?? "",
			} as const,
		];
	});
}
