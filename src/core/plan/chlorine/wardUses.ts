import { derive, type Figure, nameFigure, refusedFigure } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { partOf } from "../../partOf.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { BadRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { chlorineSheet } from "../../sheets/chlorine.ts";
import { type WardSolutionRow, wardSolutionSheet } from "../../sheets/wardSolution.ts";
import { total } from "../../total.ts";
import type { IsoDate } from "../../values/date.ts";
import { byDate } from "../byDate.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { preparationOn, preparationWith } from "./lotPreparation.ts";

/** One other use of solution on the ward, with the product in use. */
export interface WardUse {
	/** What it is used for. */
	readonly use: string;
	readonly name: Figure<string>;
	readonly litres: Figure;
	/** One day's mixing on the first day. */
	readonly firstDay: Figure<Preparation>;
	/** Product over all days of the plan. */
	readonly quantity: Figure;
}

const overThePlan = total("ward_quantity", say`Product over the plan`, say`mL, g or tablets`);
const quantityOf = partOf<Preparation, "quantity">(
	measureOut,
	"quantity",
	say`Product a day`,
	say`mL, g or tablets`,
);

/** Every other use: mixed once a day, from the lot to use first that day. One that cannot be read has no figures. */
export function wardUses(unit: UnitFigures, dates: readonly IsoDate[]): WardUse[] {
	const { rows, badRows } = unit.read.tables.wardSolution;
	const understood = rows.map((row) => {
		const litres = cellFigure(wardSolutionSheet, row, "litres_per_day");
		const strengthWanted = cellFigure(wardSolutionSheet, row, "strength_pct");
		const days = dates.map((date) => ({
			date,
			whole: mixedOn(unit, date, litres, strengthWanted),
		}));
		return {
			use: row.value.use,
			name: cellFigure(wardSolutionSheet, row, "use"),
			litres,
			firstDay: (days[0] as (typeof days)[number]).whole,
			quantity: derive(overThePlan, {
				parts: byDate(say`Product a day`, say`mL, g or tablets`, days, ({ whole }) =>
					derive(quantityOf, { whole }),
				),
			}),
		};
	});
	return [...understood, ...badRows.map(notUnderstood)];
}

function notUnderstood({ line, value, problems }: BadRow<WardSolutionRow>): WardUse {
	const place = { file: wardSolutionSheet.file, line, column: "litres_per_day" };
	const refused = refusedFigure(say`Product a day`, say`mL, g or tablets`, place, ...problems);
	const use = value.use ?? say`line ${line}`;
	return {
		use,
		name: nameFigure(say`Used for`, use),
		litres: refused,
		firstDay: refused,
		quantity: refused,
	};
}

function mixedOn(
	unit: UnitFigures,
	date: IsoDate,
	litres: Figure,
	strengthPct: Figure,
): Figure<Preparation> {
	const { productInUse } = unit;
	if (!("row" in productInUse)) return productInUse;
	const { strength } = preparationOn(unit, productInUse, date);
	const place = { file: chlorineSheet.file, line: productInUse.row.line, column: "strength" };
	return preparationWith(unit, strength, place, litres, strengthPct);
}
