import { distinct, type Problem } from "../../../core/problem.ts";
import { say } from "../../../core/say.ts";
import { unitsSheet } from "../../../core/sheets/units.ts";
import type { UnitOrder } from "../../../core/units/combineOrders.ts";
import type { OrderRow } from "../../../core/units/needOf.ts";
import type { UnitRow } from "../../../core/units/worstFirst.ts";
import { valuesOf } from "../../../core/valuesOf.ts";
import { type DistrictUnit, ordersOf, unreadUnit } from "../../../io/district/districtUnit.ts";
import { problemLines } from "../../../io/district/problemLines.ts";
import type { GivenUnit } from "./givenUnits.ts";

/** What the page keeps of a unit: values and texts, never its plan, so that thousands find room. */
export interface HeldUnit {
	readonly row: UnitRow;
	readonly orders: readonly OrderRow[];
	/** Its lines of units-problems.csv. */
	readonly problems: string;
	/** Where its workbook is read again when somebody looks into its plan. */
	readonly given: GivenUnit;
}

/** A unit that was planned, or could not be read. */
export function heldUnit(
	given: GivenUnit,
	{ whose, line, problems, planned }: DistrictUnit,
): HeldUnit {
	return {
		row: valuesOf(unitsSheet, line),
		orders: planned ? ordersOf(planned.plan) : [],
		problems: problemLines(whose, problems),
		given,
	};
}

/** A unit that could not be read. */
export function unreadHeld(given: GivenUnit, problems: readonly Problem[]): HeldUnit {
	return heldUnit(given, unreadUnit({ unit: given.path, path: given.path }, problems));
}

/** A unit of which only the order came: what runs out is known, and nothing of its kits. */
export function heldOrder(given: GivenUnit, order: UnitOrder, found: readonly Problem[]): HeldUnit {
	const orders = order.rows.rows.map(({ value }) => value);
	const whose = { unit: orders[0]?.unit_name || given.path, path: given.path };
	const problems = distinct(found);
	const blank = valuesOf(unitsSheet, unreadUnit(whose, problems).line);
	const first = [...orders]
		.filter(({ run_out_on: day }) => day)
		.sort((a, b) => Number(a.run_out_on > b.run_out_on) - Number(a.run_out_on < b.run_out_on))[0];
	const row: UnitRow = {
		...blank,
		first_run_out: first?.run_out_on ?? null,
		first_run_out_item: first?.item ?? "",
		orders_late: orders.filter(({ emergency }) => emergency === "yes").length,
		state: "not_planned",
		in_words: say`Only its order was given, so nothing is known of its kits.`,
	};
	return { row, orders, problems: problemLines(whose, problems), given };
}
