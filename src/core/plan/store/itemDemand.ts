import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Preparation } from "../../chlorine/measureOut.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/rows.ts";
import { say } from "../../say.ts";
import { chlorineSheet } from "../../sheets/chlorine.ts";
import type { ItemsRow } from "../../sheets/items.ts";
import { definition } from "../../sources.ts";
import type { IsoDate } from "../../values/date.ts";
import { preparationWith, strongLots } from "../chlorine/productFigures.ts";
import { productUse } from "../chlorine/productUse.ts";
import { wardUses } from "../chlorine/wardFigures.ts";
import type { Pair } from "../countFigures.ts";
import { productOver } from "../periodFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { dailyUse, type Horizon, preparationsAhead } from "./horizon.ts";
import { itemOver, useOfItem } from "./supplyFigures.ts";

/** What is asked of an item. */
export interface ItemDemand {
	/** Over lead and review days, in the item's measure. */
	readonly use: Pair;
	/** Day by day over the horizon: in the item's measure, for the product in use in preparations. */
	readonly daily: Figure<number[]>;
}

/** What is asked of an item over the window of its order, and day by day. */
export function demandOf(
	unit: UnitFigures,
	ahead: Horizon,
	row: GoodRow<ItemsRow>,
	windowDays: Figure,
	serviceLevel: Figure,
): ItemDemand {
	const { item } = row.value;
	// A part of a day is planned for as a whole one.
	const days = Math.min(Math.max(1, Math.ceil(valueIn(windowDays) ?? 1)), ahead.days.length);
	const inUse = unit.productInUse;
	if ("row" in inUse && inUse.row.value.product === item)
		return productDemand(unit, ahead, row, days, serviceLevel);
	return {
		use: itemOver(unit, item, ahead.rounds(days), serviceLevel),
		daily: derive(dailyUse, useOfItem(unit, item, ahead.rounds(ahead.days.length))),
	};
}

/** From the lot to use first; where none is strong enough, as a fresh delivery makes it: that is what is ordered. */
function preparationToOrderFor(unit: UnitFigures, day: IsoDate): Figure<Preparation> {
	const { productInUse: inUse } = unit;
	if (!("row" in inUse) || strongLots(unit.read, inUse, day).length > 0)
		return unit.preparationOn(day);
	const place = { file: chlorineSheet.file, line: inUse.row.line, column: "strength" };
	return preparationWith(unit.read, inUse.strength, place);
}

function productDemand(
	unit: UnitFigures,
	ahead: Horizon,
	row: GoodRow<ItemsRow>,
	days: number,
	serviceLevel: Figure,
): ItemDemand {
	const window = ahead.days
		.slice(0, days)
		.map((day) => ({ ...day, preparation: preparationToOrderFor(unit, day.date) }));
	const kits = productOver(window, serviceLevel);
	const ward = wardUses(
		unit,
		window.map((day) => day.date),
	);
	const measure = nameFigure(say`Measure`, row.value.measure);
	return {
		use: productUse(preparationToOrderFor(unit, ahead.firstDay), measure, kits, ward),
		daily: derive(withWardPreparations, {
			preparations: preparationsAhead(ahead),
			share: nameFigure(say`The ward's other solution, as preparations a day`, wardShare(unit)),
		}),
	};
}

/** Chlorine of the ward's other solution a day ÷ chlorine of one preparation. */
function wardShare({ read }: UnitFigures): number {
	const {
		soak_fill_litres: soak,
		wipe_solution_litres: wipe,
		target_strength_pct: target,
	} = read.settings;
	const one = ((valueIn(soak) ?? 0) + (valueIn(wipe) ?? 0)) * (valueIn(target) ?? 0);
	const ward = read.tables.wardSolution.rows.reduce(
		(sum, { value }) => sum + value.litres_per_day * value.strength_pct,
		0,
	);
	return one > 0 ? ward / one : 0;
}

const withWardPreparations = calculation<
	{ preparations: readonly number[]; share: number },
	number[]
>({
	key: "preparations_with_ward",
	label: say`Preparations of each day, with the ward's other solution`,
	unit: say`preparations`,
	formula: say`Preparations expected + the ward's other solution, as preparations of the same chlorine.`,
	source: definition,
	inputs: {
		preparations: { label: say`Preparations of each day, expected`, unit: say`preparations` },
		share: {
			label: say`The ward's other solution, as preparations a day`,
			unit: say`preparations`,
		},
	},
	example: { inputs: { preparations: [1, 1.5], share: 0.25 }, result: [1.25, 1.75], within: 0 },
	compute: ({ preparations, share }) => preparations.map((day) => day + share),
});
