import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { takeFirstSheet } from "../../sheets/takeFirst.ts";
import { definition } from "../../source.ts";
import { type TakeStep, takeFirst } from "../../stock/takeFirst.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import type { ItemOfOrder, OrderBudget } from "./orderBudget.ts";

interface StepInputs {
	readonly steps: readonly TakeStep[];
	readonly place: number;
}

const stepInputs = {
	steps: { label: takeFirst.label, unit: takeFirst.unit },
	place: { label: say`Place`, unit: "", min: 1 },
};

const exampleSteps: readonly TakeStep[] = [
	{ item: "A", packs: 2, cost: 3, day: 4, paid: true, spent: 3 },
	{ item: "B", packs: 1, cost: 9, day: 5, paid: false, spent: 3 },
	{ item: "C", packs: 1, cost: 1, day: null, paid: true, spent: 4 },
];

const packsOf = calculation<StepInputs, number>({
	key: "step_packs",
	label: say`Packs`,
	unit: say`packs`,
	formula: say`As many as come at this place in the order of taking.`,
	source: definition,
	inputs: stepInputs,
	example: { inputs: { steps: exampleSteps, place: 1 }, result: 2, within: 0 },
	compute: ({ steps, place }) => (steps[place - 1] as TakeStep).packs,
});

const costOf = calculation<StepInputs, number | null>({
	key: "step_cost",
	label: say`Cost`,
	unit: say`currency`,
	formula: say`These packs at the price of a pack; blank where it is not known.`,
	source: definition,
	inputs: stepInputs,
	example: { inputs: { steps: exampleSteps, place: 2 }, result: 9, within: 0 },
	compute: ({ steps, place }) => (steps[place - 1] as TakeStep).cost,
});

const spentBy = calculation<StepInputs, number | null>({
	key: "step_spent",
	label: say`Spent so far`,
	unit: say`currency`,
	formula: say`The cost of all that is paid for up to this place; blank where a price is not known.`,
	source: definition,
	inputs: stepInputs,
	example: { inputs: { steps: exampleSteps, place: 3 }, result: 4, within: 1e-12 },
	compute: ({ steps, place }) => (steps[place - 1] as TakeStep).spent,
});

const outWithout = calculation<StepInputs & { firstDay: IsoDate }, string>({
	key: "step_out_without",
	label: say`Runs out without it on`,
	unit: "",
	formula: say`First day, from the delivery of an order of today on, whose average use, wastage included, is not covered without these packs.`,
	source: definition,
	inputs: { ...stepInputs, firstDay: { label: say`First day`, unit: "" } },
	example: {
		inputs: { steps: exampleSteps, place: 1, firstDay: "2027-03-01" },
		result: "2027-03-05",
		within: 0,
	},
	compute: ({ steps, place, firstDay }) => {
		const { day } = steps[place - 1] as TakeStep;
		return day === null ? "" : addDays(firstDay, day);
	},
});

/** The order as it is taken, pack after pack. */
export function takeFirstTable(
	budget: () => OrderBudget,
	firstDay: IsoDate,
): ComputedTable<typeof takeFirstSheet> {
	return onDemand(takeFirstSheet, () => {
		const { steps, items } = budget();
		const byName = new Map(items.map((item) => [item.stock.row.value.item, item]));
		return (valueIn(steps) ?? []).map((step, at) =>
			rowOf(steps, at, step, byName.get(step.item) as ItemOfOrder, firstDay),
		);
	});
}

function rowOf(
	steps: Figure<TakeStep[]>,
	at: number,
	{ item, paid }: TakeStep,
	{ stops }: ItemOfOrder,
	firstDay: IsoDate,
): ComputedRow<typeof takeFirstSheet> {
	const place = nameFigure(say`Place`, at + 1);
	return {
		place,
		item: nameFigure(say`Item`, item),
		packs: derive(packsOf, { steps, place }),
		cost: derive(costOf, { steps, place }),
		taken: nameFigure(say`Paid for`, paid ? "yes" : "no"),
		spent: derive(spentBy, { steps, place }),
		out_without: derive(outWithout, {
			steps,
			place,
			firstDay: nameFigure(say`First day`, firstDay),
		}),
		stops,
	};
}
