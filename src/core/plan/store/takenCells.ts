import { calculation, derive, nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { countTimes } from "../../countTimes.ts";
import { givenFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import type { orderSheet } from "../../sheets/order.ts";
import { sources } from "../../sources.ts";
import { dayWith, type RunsOut, runsOutWith } from "../../stock/runsOutWith.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { inSight } from "./horizon.ts";
import type { ItemOfOrder } from "./orderBudget.ts";

const cost = countTimes(
	"take_cost",
	say`What is taken costs`,
	say`currency`,
	{ label: say`Take`, unit: say`packs` },
	{ label: say`Price of a pack`, unit: say`currency` },
);

interface OutInputs {
	readonly runsOut: RunsOut;
	readonly packs: number;
	readonly ordered: number;
	readonly firstDay: IsoDate;
}

const outWith = calculation<OutInputs, string>({
	key: "out_with",
	label: say`Runs out on`,
	unit: "",
	formula: say`First day, from the delivery of an order of today on, whose average use, wastage included, is not covered with these packs; blank where every day looked at is.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		runsOut: { label: runsOutWith.label, unit: runsOutWith.unit },
		packs: { label: say`Take`, unit: say`packs`, min: 0 },
		ordered: { label: say`Packs to order`, unit: say`packs`, min: 0 },
		firstDay: { label: say`First day`, unit: "" },
	},
	example: {
		inputs: {
			runsOut: { each: 1, days: [3, 5, 8] },
			packs: 1,
			ordered: 2,
			firstDay: "2027-03-01",
		},
		result: "2027-03-06",
		within: 0,
	},
	compute: ({ runsOut, packs, ordered, firstDay }) => {
		const day = dayWith(runsOut, packs, ordered);
		return day === null ? "" : addDays(firstDay, day);
	},
});

/** Columns of the order that follow from what is taken of it. */
export const takenColumns = [
	"take_packs",
	"take_cost",
	"take_run_out_on",
	"full_run_out_on",
	"stops",
] as const;

export type TakenCells = Pick<ComputedRow<typeof orderSheet>, (typeof takenColumns)[number]>;

/** What is taken of an item, and until when it lasts. */
export function takenCells(unit: UnitFigures, of: ItemOfOrder, day: IsoDate): TakenCells {
	const { stock, taken, runsOut, stops } = of;
	const firstDay = nameFigure(say`First day`, day);
	const price = givenFigure(itemsSheet, stock.row, "pack_price");
	const ordered = stock.packs;
	return {
		take_packs: taken,
		take_cost: price
			? derive(cost, { count: taken, each: price })
			: nameFigure(say`What is taken costs`, null),
		take_run_out_on: inSight(unit, derive(outWith, { runsOut, packs: taken, ordered, firstDay })),
		full_run_out_on: inSight(unit, derive(outWith, { runsOut, packs: ordered, ordered, firstDay })),
		stops,
	};
}
