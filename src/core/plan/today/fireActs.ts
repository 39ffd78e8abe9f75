import { valueIn } from "../../outcome.ts";
import { momentAt } from "../../record/momentAt.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import type { IsoDate } from "../../values/date.ts";
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
		const [holdMinutes, heat] = [valueIn(row.hold_minutes), valueIn(row.heat_minutes)];
		const pieces = valueIn(row.pieces) ?? null;
		if (!lit.success || typeof litres !== "number" || typeof fuel !== "number") return [];
		if (typeof holdMinutes !== "number" || typeof heat !== "number") return [];
		const forDate = valueIn(row.date) as IsoDate;
		const round = valueIn(row.round) as string;
		const goal = rounds.find((each) => each.round === round && each.at.date === forDate);
		return [
			{
				kind: "fire",
				at: lit.data,
				// Under pieces it is late once they should boil; for a round's rinse, once the round begins.
				until: pieces
					? momentAt(lit.data.date, lit.data.minutes + Math.ceil(heat))
					: (goal?.at ?? momentAt(forDate, 0)),
				round,
				forDate,
				litres,
				fuel,
				fuelMeasure: valueIn(row.fuel_measure) as string,
				pots: valueIn(row.pots) as string,
				onlyIf: valueIn(row.only_if) ?? "",
				pieces,
				holdMinutes,
			} as const,
		];
	});
}
