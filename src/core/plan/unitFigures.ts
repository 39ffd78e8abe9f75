import { derive, type Figure, gather, nameFigure } from "../calculation.ts";
import type { Forecast } from "../forecast/forecast.ts";
import type { MethodsOfKits } from "../methods/methodsOfKits.ts";
import { stepsDone } from "../methods/stepsDone.ts";
import { valueIn } from "../outcome.ts";
import { listFigure } from "../read/listFigure.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import type { HourShares } from "../rounds/dayClock.ts";
import type { Loads } from "../rounds/loads.ts";
import { roundMinutes } from "../rounds/roundMinutes.ts";
import type { Step } from "../rounds/step.ts";
import { say } from "../say.ts";
import type { IsoDate } from "../values/date.ts";
import { vinegarPerDescale } from "../vinegar/vinegarPerDescale.ts";
import { type RegisterFigures, registerFigures, usableForecast } from "./births/registerFigures.ts";
import { type Dosing, dosingFor } from "./chlorine/dosing.ts";
import { type ProductFigures, productFigures, productInUse } from "./chlorine/productFigures.ts";
import { type KindFigures, kindFigures, kindNames } from "./kits/kindFigures.ts";
import { type RoundOfRecord, roundsOfRecord } from "./kits/kitRecord.ts";
import { type KitReadiness, readiness } from "./kits/readiness.ts";
import { byName, together } from "./kits/together.ts";
import { kitsInOneSoak, loadsOfUnit } from "./methods/loadsOfUnit.ts";
import { treatedByKind } from "./methods/treatedKits.ts";
import { type DescalingOnRecord, descalingOnRecord } from "./rounds/descalingOnRecord.ts";
import { hourShares } from "./rounds/hourShares.ts";
import { type Timetable, timetable } from "./rounds/timetable.ts";

/** What holds for the unit on every day of the plan. */
export interface UnitFigures extends Dosing {
	readonly afterEachUse: boolean;
	readonly timetable: Timetable;
	readonly hourShares: Figure<HourShares>;
	/** Those of the methods that the unit's kits go by. */
	readonly steps: Figure<readonly Step[]>;
	/** What one load takes, of each method. */
	readonly loads: Figure<Loads>;
	/** What the register of births teaches. */
	readonly register: RegisterFigures;
	/** Undefined where there is none or none is wanted. */
	readonly forecast: Figure<Forecast> | undefined;
	/** The rounds that were done, as the record has them. */
	readonly roundsDone: readonly RoundOfRecord[];
	readonly sinceDescaling: DescalingOnRecord;
	/** How each kit of the register stands on the first day. */
	readonly readiness: readonly KitReadiness[];
	readonly kinds: readonly KindFigures[];
	/** How the kits of each kind are treated. */
	readonly treated: Figure<readonly MethodsOfKits[]>;
	/** Days that a ready kit may be used; of several kinds, those of the kind that keeps shortest. */
	readonly readyLifeDays: Figure;
	/** Kits of all kinds. */
	readonly kitsInService: Figure;
	readonly piecesInKits: Figure<number[]>;
	readonly kitsInLoad: Figure;
	readonly vinegarPerDescale: Figure;
	readonly products: readonly ProductFigures[];
	/** The product in use, or why there is not exactly one. */
	readonly productInUse: ProductFigures | Figure<never>;
}

/** @param firstDay of the plan, and @param lastDay of which lines of the record count */
export function unitFigures(read: ReadWorkbook, firstDay: IsoDate, lastDay: IsoDate): UnitFigures {
	const { settings, tables } = read;
	const { reprocessing } = settings;
	const products = productFigures(read);
	const inUse = productInUse(read, products);
	const dosing = dosingFor(read);
	const treated = treatedByKind(read, kindNames(read));
	const listed = listFigure(say`Steps of a round`, "min", tables.steps, (rows) =>
		rows.map((row) => row.value),
	);
	const steps = derive(stepsDone, { steps: listed, kinds: treated });
	const loads = loadsOfUnit(settings, treated);
	const { label, unit } = roundMinutes.inputs.kits;
	const minutesOf = (kits: number) =>
		derive(roundMinutes, {
			steps,
			kits: { ...nameFigure(label, kits), unit },
			workers: settings.workers_per_round,
			loads,
		});
	const roundsDone = roundsOfRecord(read, (kits) => valueIn(minutesOf(kits)));
	const kits = readiness(read, roundsDone, firstDay, lastDay);
	const serving = new Set(kits.filter((kit) => kit.serves).map((kit) => kit.kit.value.kit));
	const register = registerFigures(read, firstDay);
	const learned = valueIn(settings.kit_share_from_register) === "yes";
	const share = learned ? register.kitShare : settings.kits_used_per_100_births;
	const kinds = kindFigures(read, share, (kit) => serving.has(kit.kit));
	return {
		...dosing,
		afterEachUse: valueIn(reprocessing) === "after_each_use",
		timetable: reprocessing.outcome.ok ? timetable(tables.rounds) : notKnown(reprocessing),
		hourShares: hourShares(tables.hours, tables.records),
		steps,
		loads,
		roundsDone,
		sinceDescaling: descalingOnRecord(read, firstDay, lastDay),
		register,
		forecast: usableForecast(read, register),
		readiness: kits,
		kinds,
		treated,
		readyLifeDays: shortestLife(kinds),
		kitsInService: together(kinds, say`Kits in service`, say`kits`, (kind) => kind.kitsInService),
		piecesInKits: gather(
			say`Pieces in a kit of each kind`,
			say`pieces`,
			byName(kinds, (kind) => kind.piecesInKit),
		),
		kitsInLoad: kitsInOneSoak(settings),
		vinegarPerDescale: derive(vinegarPerDescale, {
			bathLitres: settings.descale_fill_litres,
			wantedAcidPct: settings.descale_acid_pct,
			vinegarAcidPct: settings.vinegar_acid_pct,
		}),
		products,
		productInUse: inUse,
	};
}

function shortestLife(kinds: readonly KindFigures[]): Figure {
	const lives = kinds.map(({ readyLifeDays }) => readyLifeDays);
	return lives.reduce((a, b) => ((valueIn(b) ?? 0) < (valueIn(a) ?? 0) ? b : a));
}

/** Without knowing whether kits are reprocessed in rounds, nothing is planned as if they were. */
function notKnown(reprocessing: Figure<unknown>): Timetable {
	return { rounds: reprocessing as Figure<never>, starts: reprocessing as Figure<never> };
}
