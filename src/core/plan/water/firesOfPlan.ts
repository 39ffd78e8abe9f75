import { derive, type Figure, listOf, nameFigure } from "../../calculation.ts";
import { InSteps } from "../../inSteps.ts";
import type { LoadMethod } from "../../methods/method.ts";
import { answer, valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import type { IsoDate } from "../../values/date.ts";
import type { WaterNeed } from "../../water/batch.ts";
import { boilingSchedule, type Schedule } from "../../water/boilingSchedule.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { hearthFigures } from "./hearthFigures.ts";
import { type PieceLoad, pieceLoads } from "./pieceLoads.ts";
import { type RoundBoiling, roundBoiling } from "./roundBoiling.ts";
import { roundMixes } from "./roundMixes.ts";
import { isMixedWithBoiled } from "./solutionWater.ts";
import { type StoveFigures, stoveFigures } from "./stoveFigures.ts";

/** The water of one round, and which need of the schedule it is; undefined where its steps are not known. */
export interface RoundWater extends RoundBoiling {
	readonly round: RoundPlan;
	readonly need: Figure<WaterNeed>;
	readonly index: number | undefined;
}

/** A load of pieces on the fire, and which need of the schedule it is. */
export interface PiecesOnFire extends PieceLoad {
	readonly index: number | undefined;
}

/** What every round boils, and the fires for all of it together. */
export interface FiresOfPlan {
	readonly firstDay: IsoDate | undefined;
	readonly stove: StoveFigures;
	/** Water to rinse with. */
	readonly rounds: readonly RoundWater[];
	/** Loads of pieces that are boiled or steamed. */
	readonly pieces: readonly PiecesOnFire[];
	readonly needs: readonly WaterNeed[];
	readonly schedule: Figure<Schedule>;
}

/** Worked out when it is asked for, and then kept; what the rounds need and when it is lit are a step each. */
export function firesOfPlan(
	unit: UnitFigures,
	plans: () => readonly RoundPlan[],
): InSteps<FiresOfPlan> {
	return new InSteps(() => madeFires(unit, plans));
}

/** Whether some piece goes this way. */
function goesBy({ loads }: UnitFigures, method: LoadMethod): boolean | undefined {
	return valueIn(loads)?.some((load) => load.method === method);
}

/** Rounds that need boiled water: all that rinse, else those that mix with it. */
function withWater(unit: UnitFigures, plans: readonly RoundPlan[]): readonly RoundPlan[] {
	// Where it is not known how pieces are treated, rounds rinse.
	if (goesBy(unit, "chlorine") ?? true) return plans;
	if (!isMixedWithBoiled(unit.read)) return [];
	return plans.filter((round) => valueIn(roundMixes(unit, round)) !== 0);
}

interface KnownNeed {
	readonly round: RoundPlan;
	readonly need: Figure<WaterNeed>;
}

/** Each under the day and start of its round; a further one of a round by its number too. */
function byRound(known: readonly KnownNeed[]): Readonly<Record<string, Figure<WaterNeed>>> {
	const named: Record<string, Figure<WaterNeed>> = {};
	for (const [index, { round, need }] of known.entries()) {
		const name = `${round.date} ${round.round.value.start}`;
		named[name in named ? `${name} ${index}` : name] = need;
	}
	return named;
}

function* madeFires(
	unit: UnitFigures,
	plansOf: () => readonly RoundPlan[],
): Generator<void, FiresOfPlan> {
	const plans = plansOf();
	yield;
	const stove = stoveFigures(unit.read);
	const firstDay = plans[0]?.date;
	const needs: WaterNeed[] = [];
	const known: KnownNeed[] = [];
	const indexOf = (round: RoundPlan, need: Figure<WaterNeed>): number | undefined => {
		if (!need.outcome.ok) return undefined;
		known.push({ round, need });
		return needs.push(need.outcome.value) - 1;
	};
	const watered = withWater(unit, plans);
	const rounds = watered.map((round): RoundWater => {
		const water = roundBoiling(unit, stove, round, firstDay as IsoDate);
		return { ...water, round, index: indexOf(round, water.need) };
	});
	const methods = (["boiling", "steam"] as const).filter((method) => goesBy(unit, method));
	const pieces = plans.flatMap((round) =>
		pieceLoads(unit.read, round, methods, firstDay as IsoDate).map(
			(load): PiecesOnFire => ({ ...load, index: indexOf(round, load.need) }),
		),
	);
	const hearth = hearthFigures(unit.read, stove);
	yield;
	const schedule = derive(boilingSchedule, {
		needs: listOf(say`Water of each round`, "L", answer(needs), () => byRound(known)),
		...hearth,
		// Where nothing is rinsed or mixed with it, nothing has to cool.
		coolMinutes: watered.length > 0 ? hearth.coolMinutes : nameFigure(say`Cooling`, 0),
	});
	return { firstDay, stove, rounds, pieces, needs, schedule };
}
