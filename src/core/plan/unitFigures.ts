import { derive, type Figure } from "../calculation.ts";
import { kitsInLoad } from "../chlorine/kitsInLoad.ts";
import { type ProductFigures, productFigures, productInUse } from "../chlorine/productFigures.ts";
import { kitsInService, piecesInKit } from "../kits/kitCounts.ts";
import { listFigure } from "../read/listFigure.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import type { HourShares } from "../rounds/dayClock.ts";
import { hourShares } from "../rounds/hourShares.ts";
import { type Timetable, timetable } from "../rounds/timetable.ts";
import type { StepsRow } from "../sheets/steps.ts";
import { vinegarPerDescale } from "../vinegar/vinegarPerDescale.ts";

/** What holds for the unit on every day of the plan. */
export interface UnitFigures {
	readonly read: ReadWorkbook;
	readonly afterEachUse: boolean;
	readonly timetable: Timetable;
	readonly hourShares: Figure<HourShares>;
	readonly steps: Figure<readonly StepsRow[]>;
	readonly kitsInService: Figure;
	readonly piecesInKit: Figure;
	readonly kitsInLoad: Figure;
	readonly vinegarPerDescale: Figure;
	readonly products: readonly ProductFigures[];
	readonly productInUse: ProductFigures;
}

export function unitFigures(read: ReadWorkbook): UnitFigures {
	const { settings, tables } = read;
	const { reprocessing } = settings;
	const products = productFigures(read);
	return {
		read,
		afterEachUse: reprocessing.outcome.ok && reprocessing.outcome.value === "after_each_use",
		timetable: timetable(tables.rounds),
		hourShares: hourShares(tables.hours),
		steps: listFigure("Steps of a round", "min", tables.steps, (rows) =>
			rows.map((row) => row.value),
		),
		kitsInService: kitsInService(tables.kits),
		piecesInKit: piecesInKit(tables.kits, tables.kinds),
		kitsInLoad: derive(kitsInLoad, {
			capacityKits: settings.soak_capacity_kits,
			fillLitres: settings.soak_fill_litres,
			displacementLitres: settings.kit_displacement_litres,
			containerLitres: settings.soak_container_litres,
		}),
		vinegarPerDescale: derive(vinegarPerDescale, {
			bathLitres: settings.descale_fill_litres,
			wantedAcidPct: settings.descale_acid_pct,
			vinegarAcidPct: settings.vinegar_acid_pct,
		}),
		products,
		productInUse: productInUse(read, products),
	};
}
