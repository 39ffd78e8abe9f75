import { strengthMeasures } from "../chlorine/strengthMeasures.ts";
import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { sources } from "../sources.ts";
import { choice, yesNo } from "../values/choice.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const chlorineSheet = sheet({
	file: "chlorine.csv",
	title: say`Chlorine products`,
	about: say`Every product the unit can get, with the strength on its label. One of them is in use.`,
	unique: ["product"],
	columns: {
		product: typed({
			label: say`Product`,
			unit: "",
			value: name(),
			help: say`Also listed under items, where its packs and prices are.`,
		}),
		form: typed({
			label: say`Form`,
			unit: "",
			value: choice(["liquid", "powder", "tablet"]),
			help: say`How it comes.`,
		}),
		strength: typed({
			label: say`Strength on the label`,
			unit: say`in the measure beside it`,
			value: number({ min: 0.000001, max: 1_000_000 }),
			decimals: 2,
			help: say`For tablets: grams of available chlorine in one tablet, from the label, not its weight.`,
			source: sources.tabletLabel,
		}),
		strength_measure: typed({
			label: say`Strength is in`,
			unit: "",
			value: choice(strengthMeasures),
			help: say`% w/v: grams in 100 mL. % w/w: grams in 100 g. NaOCl: the label counts sodium hypochlorite.`,
		}),
		density_kg_per_l: typed({
			label: say`Density`,
			unit: "kg/L",
			value: optional(number({ min: 0.8, max: 1.6 })),
			decimals: 2,
			help: say`Needed for a liquid whose strength is w/w; left blank otherwise.`,
		}),
		fade_factor: typed({
			label: say`Loses strength faster than in the laboratory, by`,
			unit: say`times`,
			value: number({ min: 0, max: 100 }),
			fallback: 1.3,
			decimals: 1,
			help: say`A real bottle loses strength faster than a clean solution in the laboratory.`,
		}),
		loss_points_per_year: typed({
			label: say`Powder loses a year`,
			unit: say`points of %`,
			value: number({ min: 0, max: 50 }),
			fallback: 2,
			decimals: 1,
			help: say`70 % becomes 68 % after a year at 2 points.`,
			source: sources.powderLoss,
		}),
		in_use: typed({
			label: say`In use`,
			unit: "",
			value: yesNo(),
			fallback: "no",
			help: say`Exactly one product is in use.`,
		}),
		label_confirmed: typed({
			label: say`Label confirmed`,
			unit: "",
			value: yesNo(),
			fallback: "no",
			help: say`yes where the label was read again and does give a strength that the workbook asks about.`,
			added: true,
		}),
	},
});

export type ChlorineRow = RowOf<typeof chlorineSheet>;
