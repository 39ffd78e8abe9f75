import {
	type Calculation,
	calculation,
	derive,
	type Figure,
	nameFigure,
	refusedFigure,
} from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { strengthOfLiquid } from "../../chlorine/strengthOfLiquid.ts";
import { strengthOfPowder } from "../../chlorine/strengthOfPowder.ts";
import { cellFigure, givenFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type ChlorineRow, chlorineSheet } from "../../sheets/chlorine.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { definition, type Source } from "../../source.ts";
import { sources } from "../../sources.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";
import { madeOnProblem } from "../store/madeOnProblem.ts";
import { receivedOnProblem } from "../store/receivedOnProblem.ts";
import { assumedAgeOn } from "./assumedAge.ts";
import { isOfUnknownAge } from "./isOfUnknownAge.ts";

const ageInDays = calculation<{ day: IsoDate; madeOn: IsoDate }, number>({
	key: "age_days",
	label: say`Days since it was made`,
	unit: say`days`,
	formula: say`The day less the day it was made; where that is not known, the day it was received. Never below 0.`,
	source: definition,
	inputs: { day: { label: say`Day`, unit: "" }, madeOn: { label: say`Made on`, unit: "" } },
	example: { inputs: { day: "2027-03-01", madeOn: "2027-01-30" }, result: 30, within: 0 },
	compute: ({ day, madeOn }) => Math.max(0, daysFrom(madeOn, day)),
});

const gramsOf = (label: string, unit: string): Calculation<{ strength: Strength }, number> =>
	calculation<{ strength: Strength }, number>({
		key: "label_strength",
		label,
		unit,
		formula: say`As on the label.`,
		source: sources.onePercent,
		inputs: {
			strength: { label: say`Available chlorine in the product`, unit: say`g/L, g/g or g/tablet` },
		},
		example: {
			inputs: { strength: { form: "powder", gramsPerGram: 0.7 } },
			result: 0.7,
			within: 0,
		},
		compute: ({ strength }) =>
			strength.form === "liquid"
				? strength.gramsPerLitre
				: strength.form === "powder"
					? strength.gramsPerGram
					: strength.gramsPerTablet,
	});

const perLitre = gramsOf(say`Strength on the label`, "g/L");
const perGram = gramsOf(say`Strength on the label`, "g/g");

const faded = (
	unit: string,
	formula: string,
	source: Source,
	result: Strength,
	compute: (inputs: { grams: number }) => Strength,
) =>
	calculation({
		key: "strength_today",
		label: say`Available chlorine in the lot`,
		unit,
		formula,
		source,
		inputs: { grams: { label: say`Strength today`, unit } },
		example: { inputs: { grams: 0.66 }, result, within: 0 },
		compute,
	});

const fadedLiquid = faded(
	"g/L",
	say`The strength that the liquid has left.`,
	sources.fading,
	{ form: "liquid", gramsPerLitre: 0.66 },
	({ grams }) => ({ form: "liquid", gramsPerLitre: grams }),
);
const fadedPowder = faded(
	"g/g",
	say`The strength that the powder has left.`,
	sources.powderLoss,
	{ form: "powder", gramsPerGram: 0.66 },
	({ grams }) => ({ form: "powder", gramsPerGram: grams }),
);

/** The day from which a lot fades: made, else received; undefined where neither is known. */
export function bornOn({ made_on, received_on }: LotsRow): IsoDate | undefined {
	return made_on ?? received_on ?? undefined;
}

/**
 * Available chlorine in a lot on a day.
 *
 * Liquids fade by the law, powder by points a year, tablets keep their strength
 * until they expire. A liquid whose age is not known counts as the days old that the
 * unit assumes, and grows older over the plan; a powder keeps its label's strength, and the sheet says so. One whose
 * day of making cannot be right has no strength, nor one that goes by a day of receipt still to come.
 */
export function strengthOfLot(
	read: ReadWorkbook,
	product: LabelledProduct,
	lot: GoodRow<LotsRow>,
	day: IsoDate,
): Figure<Strength> {
	const isAgedByReceipt = lot.value.made_on === null;
	const wrong = isAgedByReceipt ? receivedOnProblem(read, lot) : madeOnProblem(read, lot);
	const madeOn = wrong
		? refusedFigure(lotsSheet.columns.made_on.label, "", wrong, wrong)
		: (givenFigure(lotsSheet, lot, "made_on") ?? givenFigure(lotsSheet, lot, "received_on"));
	if (madeOn) return strengthOnDay(read, product, madeOn, day);
	return isOfUnknownAge(product.row.value, lot.value)
		? strengthAfterDays(read, product, assumedAgeOn(read, lot, day))
		: product.strength;
}

interface LabelledProduct {
	readonly row: GoodRow<ChlorineRow>;
	readonly strength: Figure<Strength>;
}

/** Available chlorine in what was made on one day, on a later day. */
export function strengthOnDay(
	read: ReadWorkbook,
	product: LabelledProduct,
	madeOn: Figure<IsoDate>,
	day: IsoDate,
): Figure<Strength> {
	const days = derive(ageInDays, { day: nameFigure(say`Day`, day), madeOn });
	return strengthAfterDays(read, product, days);
}

function strengthAfterDays(
	read: ReadWorkbook,
	{ strength, row }: LabelledProduct,
	days: Figure,
): Figure<Strength> {
	if (!strength.outcome.ok || strength.outcome.value.form === "tablet") return strength;
	if (strength.outcome.value.form === "powder")
		return derive(fadedPowder, {
			grams: derive(strengthOfPowder, {
				gramsPerGram: derive(perGram, { strength }),
				days,
				lossPointsPerYear: cellFigure(chlorineSheet, row, "loss_points_per_year"),
			}),
		});
	return derive(fadedLiquid, {
		grams: derive(strengthOfLiquid, {
			gramsPerLitre: derive(perLitre, { strength }),
			storeC: read.settings.store_c,
			days,
			fadeFactor: cellFigure(chlorineSheet, row, "fade_factor"),
		}),
	});
}
