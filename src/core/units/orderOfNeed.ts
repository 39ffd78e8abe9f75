import { calculation, derive, type Figure, nameFigure } from "../calculation.ts";
import { countTimes } from "../countTimes.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { sources } from "../sources.ts";
import { packsFor } from "../stock/orderPacks.ts";

const inMeasure = say`in the item's measure`;
const needed = { label: say`Needed`, unit: inMeasure, min: 0 };

const packsOfNeed = calculation<{ need: number; packSize: number }, number>({
	key: "combined_packs",
	label: say`Packs to order`,
	unit: say`packs`,
	formula: say`Needs of the units that are short, added up ÷ pack size.`,
	source: sources.periodicReview,
	rounding: say`Up to whole packs, once for all units together.`,
	inputs: { need: needed, packSize: { label: say`Pack size`, unit: inMeasure, min: 1e-9 } },
	example: { inputs: { need: 150, packSize: 100 }, result: 2, within: 0 },
	compute: ({ need, packSize }) => packsFor(need, packSize),
});

/** What is left to order of a need once the store of the district has given what it has. */
export const lessStore = calculation<{ need: number; inStore: number }, number>({
	key: "less_store",
	label: say`To order`,
	unit: inMeasure,
	formula: say`Needed − in the district's store; nothing where the store has enough.`,
	source: definition,
	inputs: {
		need: needed,
		inStore: { label: say`In the district's store`, unit: inMeasure, min: 0 },
	},
	example: { inputs: { need: 150, inStore: 40 }, result: 110, within: 0 },
	compute: ({ need, inStore }) => Math.max(0, need - inStore),
});

const packs = { label: say`Packs to order`, unit: say`packs` };
const quantity = countTimes("combined_quantity", say`Quantity to order`, inMeasure, packs, {
	label: say`Pack size`,
	unit: inMeasure,
});
const cost = countTimes("combined_cost", say`Cost`, say`currency`, packs, {
	label: say`Price of a pack`,
	unit: say`currency`,
});

const notKnown = {
	order_packs: nameFigure(packs.label, null),
	order_quantity: nameFigure(quantity.label, null),
	cost: nameFigure(cost.label, null),
};

/**
 * Packs, quantity and cost of what several units need together; blank where nobody knows the need.
 *
 * @param price of a pack, where one is known
 */
export function orderOfNeed(
	need: Figure<number | null>,
	packSize: Figure,
	price: number | undefined,
): Readonly<Record<keyof typeof notKnown, Figure<number | null>>> {
	if (!isKnown(need)) return notKnown;
	const ordered = derive(packsOfNeed, { need, packSize });
	const each = price === undefined ? undefined : nameFigure(say`Price of a pack`, price);
	return {
		order_packs: ordered,
		order_quantity: derive(quantity, { count: ordered, each: packSize }),
		cost: each ? derive(cost, { count: ordered, each }) : nameFigure(say`Cost`, null),
	};
}

export function isKnown(figure: Figure<number | null>): figure is Figure {
	return !figure.outcome.ok || figure.outcome.value !== null;
}
