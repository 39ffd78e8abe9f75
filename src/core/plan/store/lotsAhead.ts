import {
	allOf,
	calculation,
	derive,
	type Figure,
	gather,
	nameFigure,
	typedFigure,
} from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { measureOut } from "../../chlorine/measureOut.ts";
import { answer, type Outcome, valueIn } from "../../outcome.ts";
import { Refusal } from "../../refusal.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { sources } from "../../sources.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import { type ListedLot, lotsInput, lotsInStore } from "../../stock/lotsInStore.ts";
import { onHand } from "../../stock/onHand.ts";
import type { ProjectedLot } from "../../stock/projection.ts";
import { addDays, daysFrom, type IsoDate } from "../../values/date.ts";
import { litresToMeasure } from "../chlorine/litresOfPreparation.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Horizon } from "./horizon.ts";
import type { LotToCount } from "./lotsToCount.ts";

/** The lots of an item, in the store and on their way, as the projection sees them; of a chlorine product as they fade. */
export function lotsAhead(
	unit: UnitFigures,
	{ firstDay }: Horizon,
	item: string,
	counted: readonly LotToCount[],
): Figure<ProjectedLot[]> {
	const lots = derive(lotsInStore, {
		onHand: quantitiesOf(counted),
		listed: datesOf(counted),
		firstDay: nameFigure(say`First day`, firstDay),
	});
	const product = unit.products.find(({ row }) => row.value.product === item);
	if (!product || !lots.outcome.ok) return lots;
	const { settings, tables } = unit.read;
	const measure = tables.items.rows.find(({ value }) => value.item === item)?.value.measure;
	const asTheyFade = lots.outcome.value.map((lot, at): FadingLot => {
		const { listed, strengthOn } = counted[at] as LotToCount;
		return {
			...lot,
			firstDay,
			expiresOn: listed.expires_on,
			measure,
			strengthOn: (day) => strengthOn(product, day),
		};
	});
	const strengths = strengthsOf(asTheyFade);
	return derive(fading, {
		lots: { ...lots, outcome: strengths.ok ? answer(asTheyFade) : strengths },
		targetPct: unit.startPct,
		litres: litresToMeasure(unit.read),
		stepMl: settings.measure_step_ml,
		stepGrams: settings.measure_step_g,
	});
}

/** Of what there is and in date: a lot of which nobody knows how strong it is leaves the stock without a number. */
function strengthsOf(lots: readonly FadingLot[]): Outcome<Strength[]> {
	return allOf(
		lots
			.filter(({ quantity, last }) => quantity > 0 && last >= 0)
			.map(({ firstDay, strengthOn }) => strengthOn(firstDay)),
	);
}

function quantitiesOf(lots: readonly LotToCount[]): Figure<number[]> {
	const named = lots.map(({ key, quantity }): [string, Figure] => [key, quantity]);
	return gather(onHand.label, lotsInput.unit, Object.fromEntries(named));
}

function datesOf(lots: readonly LotToCount[]): Figure<ListedLot[]> {
	const { label, unit } = lotsInStore.inputs.listed;
	const listed = lots.map((lot) => lot.listed);
	return typedFigure(label, unit, listed, { file: lotsSheet.file, line: null, column: "lot" });
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

const { strength: _, ...mixInputs } = measureOut.inputs;

const exampleLot = { name: "A", quantity: 10, from: 0 };

const fading = calculation<Fading, ProjectedLot[]>({
	key: "lots_fading",
	label: lotsInput.label,
	unit: lotsInput.unit,
	formula: say`Each lot up to the last day on which it is strong enough; a preparation takes more of it as it loses strength.`,
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
	const lastDay = last === undefined ? -1 : last === null ? lot.last : daysFrom(firstDay, last);
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
