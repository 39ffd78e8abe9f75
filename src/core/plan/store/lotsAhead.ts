import {
	calculation,
	derive,
	type Figure,
	nameFigure,
	Refusal,
	typedFigure,
} from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
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
import { litresOfPreparation } from "../chlorine/productFigures.ts";
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
	const lotsOf = <L>(lotOf: (row: GoodRow<LotsRow>) => L) =>
		typedFigure(lotsInput.label, lotsInput.unit, rows.map(lotOf), {
			file: lotsSheet.file,
			line: null,
			column: "quantity",
		});
	const product = unit.products.find(({ row }) => row.value.product === item);
	if (!product) return lotsOf((row) => plainLot(row, firstDay));
	const { settings, tables } = unit.read;
	const measure = tables.items.rows.find(({ value }) => value.item === item)?.value.measure;
	return derive(fading, {
		lots: lotsOf((row) => ({
			...plainLot(row, firstDay),
			firstDay,
			expiresOn: row.value.expires_on,
			measure,
			strengthOn: (day) => strengthOfLot(unit.read, product, row, day),
		})),
		targetPct: settings.target_strength_pct,
		litres: litresOfPreparation(unit.read),
		stepMl: settings.measure_step_ml,
		stepGrams: settings.measure_step_g,
	});
}

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

/** What a preparation is mixed by, whatever it is mixed from. */
interface Mix {
	readonly targetPct: number;
	readonly litres: number;
	readonly stepMl: number;
	readonly stepGrams: number;
}

/** A lot of a chlorine product, and how strong it is on a day. */
interface FadingLot extends ProjectedLot {
	readonly firstDay: IsoDate;
	readonly expiresOn: IsoDate | null;
	/** In which the store counts it; undefined where it is not among the items. */
	readonly measure: string | undefined;
	readonly strengthOn: (day: IsoDate) => Figure<Strength>;
}

interface Fading extends Mix {
	readonly lots: readonly FadingLot[];
}

const lotsInput = { label: say`Lots`, unit: say`in the item's measure` };
const { strength: _, ...mixInputs } = measureOut.inputs;

const exampleLot = { name: "A", quantity: 10, from: 0 };

const fading = calculation<Fading, ProjectedLot[]>({
	key: "lots_fading",
	label: lotsInput.label,
	unit: lotsInput.unit,
	formula: say`Each lot up to the last day on which it is strong enough; a preparation takes more of it as it fades.`,
	source: sources.firstExpiredFirstOut,
	inputs: { lots: lotsInput, ...mixInputs },
	example: {
		// 3.5 % for ten days, then 0.4 %: till then 1,000 mL × 0.5 ÷ 3.5 make a litre, 143 mL measured as 150.
		inputs: {
			lots: [
				{
					...exampleLot,
					last: Number.POSITIVE_INFINITY,
					ends: "out of date",
					perUnit: () => 1,
					firstDay: "2027-03-01",
					expiresOn: null,
					measure: "L",
					strengthOn: (day) => {
						const gramsPerLitre = day < "2027-03-11" ? 35 : 4;
						return nameFigure("", { form: "liquid", gramsPerLitre });
					},
				},
			],
			targetPct: 0.5,
			litres: 1,
			stepMl: 10,
			stepGrams: 1,
		},
		result: [
			{
				...exampleLot,
				last: 9,
				ends: "too weak for the strength wanted",
				perUnit: (day) => (day < 10 ? 0.15 : 1),
			},
		],
		within: 1e-9,
	},
	compute: ({ lots, ...mix }) => lots.map((lot) => asItFades(lot, mix)),
});

/** One unit of demand is a preparation, which takes more of the lot as it fades. */
function asItFades(lot: FadingLot, mix: Mix): ProjectedLot {
	const { name, quantity, from, firstDay, measure, strengthOn } = lot;
	const last = lastUsableDay(strengthOn, mix.targetPct, firstDay, lot.expiresOn);
	const lastDay = last === undefined ? -1 : last === null ? lot.last : daysAfter(firstDay, last);
	return {
		name,
		quantity,
		from,
		last: lastDay,
		ends: lastDay < lot.last ? "too weak for the strength wanted" : lot.ends,
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
