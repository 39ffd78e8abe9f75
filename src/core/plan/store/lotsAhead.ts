import { calculation, derive, type Figure, Refusal, typedFigure } from "../../calculation.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { measureOut } from "../../chlorine/measureOut.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/rows.ts";
import { say } from "../../say.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { sources } from "../../sources.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import type { ProjectedLot } from "../../stock/projection.ts";
import { addDays, dayNumber, type IsoDate } from "../../values/date.ts";
import { litresOfPreparation, type ProductFigures } from "../chlorine/productFigures.ts";
import { strengthOfLot } from "../chlorine/strengthOfLot.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Horizon } from "./horizon.ts";

/** The lots of an item as the projection sees them; of a chlorine product as they fade. */
export function lotsAhead(
	unit: UnitFigures,
	{ firstDay }: Horizon,
	item: string,
): Figure<ProjectedLot[]> {
	const rows = unit.read.tables.lots.rows.filter(({ value }) => value.item === item);
	const lots = typedFigure(
		lotsInput.label,
		lotsInput.unit,
		rows.map((row) => plainLot(row, firstDay)),
		{ file: lotsSheet.file, line: null, column: "quantity" },
	);
	const product = unit.products.find(({ row }) => row.value.product === item);
	if (!product) return lots;
	const { settings } = unit.read;
	const fading = calculation<Fading, ProjectedLot[]>({
		key: "lots_fading",
		label: lotsInput.label,
		unit: lotsInput.unit,
		formula: say`Each lot up to the last day on which it is strong enough; a preparation takes more of it as it fades.`,
		source: sources.firstExpiredFirstOut,
		inputs: { lots: lotsInput, ...mixInputs },
		compute: ({ lots: plain, ...mix }) =>
			plain.map((lot, at) =>
				fadingLot(unit, product, rows[at] as GoodRow<LotsRow>, lot, firstDay, mix),
			),
	});
	return derive(fading, {
		lots,
		targetPct: settings.target_strength_pct,
		litres: litresOfPreparation(unit.read),
		stepMl: settings.measure_step_ml,
		stepGrams: settings.measure_step_g,
	});
}

/** What a preparation is mixed by, whatever it is mixed from. */
interface Mix {
	readonly targetPct: number;
	readonly litres: number;
	readonly stepMl: number;
	readonly stepGrams: number;
}

interface Fading extends Mix {
	readonly lots: readonly ProjectedLot[];
}

const lotsInput = { label: say`Lots`, unit: say`in the item's measure` };
const { strength: _, ...mixInputs } = measureOut.inputs;

function plainLot({ value }: GoodRow<LotsRow>, firstDay: IsoDate): ProjectedLot {
	return {
		name: value.lot,
		quantity: value.quantity,
		from: value.arrives_on ? daysAfter(firstDay, value.arrives_on) : 0,
		last: value.expires_on ? daysAfter(firstDay, value.expires_on) : Number.POSITIVE_INFINITY,
		ends: "out of date",
		perUnit: () => 1,
	};
}

function daysAfter(from: IsoDate, to: IsoDate): number {
	return (dayNumber(to) as number) - (dayNumber(from) as number);
}

/** One unit of demand is a preparation, which takes more of the lot as it fades. */
function fadingLot(
	unit: UnitFigures,
	product: ProductFigures,
	lot: GoodRow<LotsRow>,
	plain: ProjectedLot,
	firstDay: IsoDate,
	mix: Mix,
): ProjectedLot {
	const strengthOn = (day: IsoDate) => strengthOfLot(unit.read, product, lot, day);
	const last = lastUsableDay(strengthOn, mix.targetPct, firstDay, lot.value.expires_on);
	const lastDay = last === undefined ? -1 : last === null ? plain.last : daysAfter(firstDay, last);
	const measure = unit.read.tables.items.rows.find(({ value }) => value.item === lot.value.item)
		?.value.measure;
	return {
		...plain,
		last: lastDay,
		ends: lastDay < plain.last ? "too weak for the strength wanted" : plain.ends,
		perUnit: (day) => {
			const strength = valueIn(strengthOn(addDays(firstDay, day)));
			if (!strength || !measure) return 1;
			const made = measureOut.compute({ strength, ...mix });
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
