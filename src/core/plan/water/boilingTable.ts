import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { Grouped } from "../../grouped.ts";
import type { InSteps } from "../../inSteps.ts";
import { valueIn } from "../../outcome.ts";
import { partOf } from "../../partOf.ts";
import { withCellsOnDemand } from "../../rowOnDemand.ts";
import { say } from "../../say.ts";
import { boilingSheet } from "../../sheets/boiling.ts";
import { writeClock } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { type Boiling, boilingOfRound } from "../../water/boilingOfRound.ts";
import { policyKept } from "../../water/boilPolicy.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { fireCells, fireOfSchedule } from "./fireCells.ts";
import type { FiresOfPlan, RoundWater } from "./firesOfPlan.ts";
import { piecesRow } from "./piecesRow.ts";
import { fuelOfBoiling } from "./roundBoiling.ts";

type Row = ComputedRow<typeof boilingSheet>;

/** By these the fires are put in order, and found again. */
const atOnce = ["date", "light_by"] as const;

type AtOnce = (typeof atOnce)[number];

/** What is worked out of a fire when somebody looks at it: of a year's fires a page shows a few. */
const columns = Object.keys(boilingSheet.columns).filter(
	(key): key is Exclude<keyof Row, AtOnce> => !atOnce.some((each) => each === key),
);

const litres = partOf<Boiling, "litres">(boilingOfRound, "litres", say`Water needed`, "L");
const startLitres = partOf<Boiling, "startLitres">(
	boilingOfRound,
	"startLitres",
	say`Start with`,
	"L",
);
const batches = partOf<Boiling, "batches">(boilingOfRound, "batches", say`Batches`, say`batches`);
const heating = partOf<Boiling, "heatMinutes">(boilingOfRound, "heatMinutes", say`Heating`, "min");

/** Every fire of the plan by the clock; last the rounds for whose water there is none. */
export function boilingTable(
	unit: UnitFigures,
	fires: InSteps<FiresOfPlan>,
): ComputedTable<typeof boilingSheet> {
	return onDemand(boilingSheet, () => {
		const all = fires.made;
		const lit = firesByNeed(all);
		const rows = [
			...all.rounds.flatMap((water) => {
				const its = lit.of(water.index);
				const shown = its.length > 0 ? its : [null];
				return shown.map((at) => rowOf(unit, all, water, at));
			}),
			...all.pieces.map((load) => piecesRow(unit, all, load, lit.of(load.index)[0] ?? null)),
		];
		return rows
			.map((row) => ({ row, at: byClock(row) }))
			.sort((a, b) => inOrder(a.at, b.at))
			.map(({ row }) => row);
	});
}

/** Rows without a time come last, by their rounds' days. */
function byClock({ light_by, date }: Row): string {
	return valueIn(light_by) ?? `9999 ${valueIn(date)}`;
}

/** Which fires of the schedule are lit for each need. */
function firesByNeed({ schedule }: FiresOfPlan): Grouped<number | undefined, number> {
	const lit = new Grouped<number | undefined, number>();
	for (const [at, { need }] of (valueIn(schedule)?.fires ?? []).entries()) lit.add(need, at);
	return lit;
}

/** @param at which fire of the schedule; null where there is none */
function rowOf(
	unit: UnitFigures,
	{ stove, schedule, firstDay: first }: FiresOfPlan,
	{ round, boiling, need }: RoundWater,
	at: number | null,
): Row {
	const { settings } = unit.read;
	const fire = derive(fireOfSchedule, { schedule, at: nameFigure(say`Which fire`, at) });
	// A round whose steps are not known waits for them, not for a pot.
	const fireOrWhy = need.outcome.ok ? fire : { ...fire, outcome: need.outcome };
	const firstDay = nameFigure(say`First day of the plan`, first as IsoDate);
	const electric = stove.mjPerKg.outcome.ok && stove.mjPerKg.outcome.value === null;
	const lit = { fire: fireOrWhy, firstDay };
	const its = {
		date: nameFigure(say`Date`, round.date),
		light_by: derive(fireCells.lightBy, lit),
	};
	return withCellsOnDemand(its, columns, () => ({
		round: nameFigure(say`Round`, round.round.value.label || writeClock(round.round.value.start)),
		...(at === null
			? {
					litres: derive(litres, { whole: boiling }),
					batches: derive(batches, { whole: boiling }),
					heat_minutes: derive(heating, { whole: boiling }),
					fuel_quantity: fuelOfBoiling(stove, boiling),
					start_litres: derive(startLitres, { whole: boiling }),
				}
			: {
					litres: derive(fireCells.litres, { whole: fire }),
					batches: derive(fireCells.batches, { whole: fire }),
					heat_minutes: derive(fireCells.heating, { whole: fire }),
					fuel_quantity: derive(fireCells.fuel, {
						fire,
						holdMinutes: stove.holdMinutes,
						netKw: stove.netKw,
						efficiency: stove.efficiency,
						mjPerKg: stove.mjPerKg,
					}),
					start_litres: derive(fireCells.start, { whole: fire }),
				}),
		hold_minutes: stove.holdMinutes,
		boiling_point_c: stove.boilingC,
		cool_minutes: stove.coolMinutes,
		fuel: settings.fuel as Figure<string>,
		fuel_measure: nameFigure(say`Measured in`, electric ? "kWh" : "kg"),
		cool_by: derive(fireCells.coolBy, lit),
		stove: derive(fireCells.stove, { whole: fireOrWhy }),
		pots: derive(fireCells.pots, { fire: fireOrWhy }),
		only_if: onlyIf(unit),
		pieces: nameFigure(say`Pieces on the fire`, null),
	}));
}

/** Under which condition a fire is lit; blank where it is lit in any case. */
function onlyIf({ read: { settings }, afterEachUse }: UnitFigures): Figure<string> {
	const { boil_for } = settings;
	if (!boil_for.outcome.ok) return boil_for as Figure<never>;
	const words = {
		every_round: "",
		standing: say`water used or too old`,
		after_use: say`a kit waits`,
	};
	return nameFigure(say`Only if`, words[policyKept(boil_for.outcome.value, afterEachUse)]);
}
