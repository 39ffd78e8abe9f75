import { calculation, derive, type Figure, nameFigure, refusedFigure } from "../../calculation.ts";
import { memoize } from "../../memoize.ts";
import { firstReasons } from "../../outcome.ts";
import { cellFigure, givenFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { commonPractice } from "../../source.ts";
import type { IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { roundsByDate } from "../byDate.ts";
import { preparationInUse } from "../chlorine/lotPreparation.ts";
import { productInStore } from "../chlorine/productUse.ts";
import { wardUses } from "../chlorine/wardUses.ts";
import { expectedOver } from "../countsOfPeriod.ts";
import { type DayFigures, withCounts } from "../dayFigures.ts";
import { productExpectedOver } from "../productOver.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { expectedOfItem, isUseKnown } from "./useOfItem.ts";

/** What the use expected over the plan costs. */
export interface CostFigures {
	/** Items that have a price, by name. */
	readonly byItem: Readonly<Record<string, Figure>>;
	/** In the order of their names. */
	readonly withoutPrice: readonly string[];
	readonly births: Figure;
	readonly kits: Figure;
}

const costOfUse = calculation<{ use: number; price: number; packSize: number }, number>({
	key: "cost_of_use",
	label: say`Cost of what is used`,
	unit: say`currency`,
	formula: say`Average use × price of a pack ÷ pack size.`,
	source: commonPractice,
	inputs: {
		use: { label: say`Use, average`, unit: say`in the item's measure`, min: 0 },
		price: { label: say`Price of a pack`, unit: say`currency`, min: 0 },
		packSize: { label: say`Pack size`, unit: say`in the item's measure`, min: 1e-9 },
	},
	example: { inputs: { use: 250, price: 4, packSize: 100 }, result: 10, within: 1e-12 },
	compute: ({ use, price, packSize }) => (use * price) / packSize,
});

/** What of the plan is the same whatever the kits are disinfected with: births, rounds and all other items. */
export interface PlanCosted {
	readonly days: readonly DayFigures[];
	readonly births: Figure;
	readonly kits: Figure;
	readonly useOf: (item: string) => Figure;
}

export function planCosted(unit: UnitFigures, days: readonly DayFigures[]): PlanCosted {
	const rounds = roundsByDate(days);
	const { births, kitsToReprocess } = expectedOver(days);
	return {
		days,
		births,
		kits: kitsToReprocess,
		useOf: memoize((item: string) => expectedOfItem(unit, item, { rounds, days })),
	};
}

/** @param unit as it is, or with one of `ruleChanges` */
export function costsOf(unit: UnitFigures, plan: PlanCosted): CostFigures {
	const days = withCounts(unit, plan.days);
	const dates = days.map(({ date }) => date);
	const ward = wardUses(unit, dates);
	const byItem: Record<string, Figure> = {};
	const withoutPrice: string[] = [];
	// By name: a sum that cannot be told gives its first reasons, in whatever order the rows are.
	const byName = (one: GoodRow<ItemsRow>, other: GoodRow<ItemsRow>) =>
		inOrder(one.value.item, other.value.item);
	for (const row of [...unit.read.tables.items.rows].sort(byName)) {
		const { value } = row;
		const use = isInUse(unit, value.item)
			? productInStore(
					preparationInUse(unit, dates[0] as IsoDate),
					nameFigure(say`Measure`, value.measure),
					productExpectedOver(unit, days),
					ward,
				)
			: plan.useOf(value.item);
		const price = givenFigure(itemsSheet, row, "pack_price");
		if (!price) {
			if (!use.outcome.ok || use.outcome.value > 0) withoutPrice.push(value.item);
			continue;
		}
		byItem[value.item] = derive(costOfUse, {
			use,
			price,
			packSize: cellFigure(itemsSheet, row, "pack_size"),
		});
	}
	for (const [name, cost] of costsNotRead(unit)) byItem[name] ??= cost;
	return {
		byItem,
		withoutPrice,
		births: plan.births,
		kits: plan.kits,
	};
}

/** Items of which something goes and whose row cannot be read: without them a sum would stand for less than is paid. */
function costsNotRead(unit: UnitFigures): [string, Figure][] {
	const { file, badRows } = unit.read.tables.items;
	return badRows
		.filter(
			({ value: { item } }) => item === undefined || isInUse(unit, item) || isUseKnown(unit, item),
		)
		.map(({ line, value: { item = "" }, problems }) => [
			item,
			refusedFigure(
				costOfUse.label,
				costOfUse.unit,
				{ file, line, column: "item" },
				...firstReasons(problems),
			),
		]);
}

function isInUse({ productInUse }: UnitFigures, item: string): boolean {
	return "row" in productInUse && productInUse.row.value.product === item;
}

/** The unit with another product in use, or with the solution made by the other rule. */
export function ruleChanges(unit: UnitFigures): { name: string; unit: UnitFigures }[] {
	const { productInUse: inUse, products } = unit;
	const others = products
		.filter((product) => "row" in inUse && product.row !== inUse.row)
		.map((product) => ({
			name: say`With ${product.row.value.product}`,
			unit: {
				...unit,
				productInUse: product,
			},
		}));
	return [...others, ...otherRule(unit)];
}

function otherRule(unit: UnitFigures): { name: string; unit: UnitFigures }[] {
	const made = unit.read.settings.solution_made;
	if (!made.outcome.ok) return [];
	const other = made.outcome.value === "each_round" ? "each_day" : "each_round";
	const solution_made = {
		...made,
		outcome: { ok: true as const, value: other as typeof made.outcome.value },
	};
	const read = { ...unit.read, settings: { ...unit.read.settings, solution_made } };
	const name =
		other === "each_day" ? say`Solution made once a day` : say`Solution made for each round`;
	return [{ name, unit: { ...unit, read } }];
}
