import { Refusal } from "../calculation.ts";
import { lastUsableDay } from "../chlorine/lastUsableDay.ts";
import { measureOut } from "../chlorine/measureOut.ts";
import { litresOfPreparation, type ProductFigures } from "../chlorine/productFigures.ts";
import { strengthOfLot } from "../chlorine/strengthOfLot.ts";
import { valueIn } from "../outcome.ts";
import type { GoodRow } from "../read/readTable.ts";
import type { LotsRow } from "../sheets/lots.ts";
import { inMeasure } from "../stock/inMeasure.ts";
import type { ProjectedLot } from "../stock/projection.ts";
import { addDays, dayNumber, type IsoDate } from "../values/date.ts";
import type { Horizon } from "./horizon.ts";
import type { UnitFigures } from "./unitFigures.ts";

/** The lots of an item as the projection sees them; of a chlorine product as they fade. */
export function lotsAhead(unit: UnitFigures, { firstDay }: Horizon, item: string): ProjectedLot[] {
	const lots = unit.read.tables.lots.rows.filter(({ value }) => value.item === item);
	const product = unit.products.find(({ row }) => row.value.product === item);
	return lots.map((lot) => {
		const plain: ProjectedLot = {
			name: lot.value.lot,
			quantity: lot.value.quantity,
			from: lot.value.arrives_on ? daysAfter(firstDay, lot.value.arrives_on) : 0,
			last: lot.value.expires_on
				? daysAfter(firstDay, lot.value.expires_on)
				: Number.POSITIVE_INFINITY,
			ends: "out of date",
			perUnit: () => 1,
		};
		return product ? fading(unit, product, lot, plain, firstDay) : plain;
	});
}

function daysAfter(from: IsoDate, to: IsoDate): number {
	return (dayNumber(to) as number) - (dayNumber(from) as number);
}

/** One unit of demand is a preparation, which takes more of the lot as it fades. */
function fading(
	unit: UnitFigures,
	product: ProductFigures,
	lot: GoodRow<LotsRow>,
	plain: ProjectedLot,
	firstDay: IsoDate,
): ProjectedLot {
	const { settings, tables } = unit.read;
	const strengthOn = (day: IsoDate) => strengthOfLot(unit.read, product, lot, day);
	const target = valueIn(settings.target_strength_pct) ?? 0;
	const last = lastUsableDay(strengthOn, target, firstDay, lot.value.expires_on);
	const lastDay = last === undefined ? -1 : last === null ? plain.last : daysAfter(firstDay, last);
	const litres = valueIn(litresOfPreparation(unit.read));
	const stepMl = valueIn(settings.measure_step_ml);
	const stepGrams = valueIn(settings.measure_step_g);
	const measure = tables.items.rows.find(({ value }) => value.item === lot.value.item)?.value
		.measure;
	return {
		...plain,
		last: lastDay,
		ends: lastDay < plain.last ? "too weak for the strength wanted" : plain.ends,
		perUnit: (day) => {
			const strength = valueIn(strengthOn(addDays(firstDay, day)));
			if (!strength || !litres || !stepMl || !stepGrams || !measure) return 1;
			const made = measureOut.compute({ strength, litres, targetPct: target, stepMl, stepGrams });
			if (made instanceof Refusal) return 1;
			const quantity = inMeasure.compute({
				quantity: made.quantity,
				from: made.measure,
				to: measure,
			});
			return quantity instanceof Refusal ? 1 : quantity;
		},
	};
}
