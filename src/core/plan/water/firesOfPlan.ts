import { derive, type Figure, listOf } from "../../calculation.ts";
import { answer, valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import type { WaterNeed } from "../../water/batch.ts";
import { boilingSchedule, type Schedule } from "../../water/boilingSchedule.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { hearthFigures } from "./hearthFigures.ts";
import { type RoundBoiling, roundBoiling } from "./roundBoiling.ts";
import { type StoveFigures, stoveFigures } from "./stoveFigures.ts";

/** The water of one round, and which need of the schedule it is; undefined where its steps are not known. */
export interface RoundWater extends RoundBoiling {
	readonly round: RoundPlan;
	readonly need: Figure<WaterNeed>;
	readonly index: number | undefined;
}

/** The water of every round, and the fires for all of them together. */
export interface FiresOfPlan {
	readonly stove: StoveFigures;
	readonly rounds: readonly RoundWater[];
	readonly needs: readonly WaterNeed[];
	readonly schedule: Figure<Schedule>;
}

/** Worked out when it is asked for, and then kept. */
export function firesOfPlan(unit: UnitFigures, plans: readonly RoundPlan[]): () => FiresOfPlan {
	let made: FiresOfPlan | undefined;
	return () => {
		made ??= madeFires(unit, plans);
		return made;
	};
}

/** Whether rounds rinse with boiled water: some piece goes into chlorine, or that is not known. */
function isRinsed({ loads }: UnitFigures): boolean {
	return valueIn(loads)?.some(({ method }) => method === "chlorine") ?? true;
}

function madeFires(unit: UnitFigures, plans: readonly RoundPlan[]): FiresOfPlan {
	const stove = stoveFigures(unit.read);
	const [first] = plans;
	const needs: WaterNeed[] = [];
	const known: Record<string, Figure<WaterNeed>> = {};
	const rounds = (isRinsed(unit) ? plans : []).map((round): RoundWater => {
		const water = roundBoiling(unit.read, stove, round, (first ?? round).date);
		const { outcome } = water.need;
		if (!outcome.ok) return { ...water, round, index: undefined };
		known[`${round.date} ${round.round.value.start}`] = water.need;
		return { ...water, round, index: needs.push(outcome.value) - 1 };
	});
	const schedule = derive(boilingSchedule, {
		needs: listOf(say`Water of each round`, "L", answer(needs), () => known),
		...hearthFigures(unit.read, stove),
	});
	return { stove, rounds, needs, schedule };
}
