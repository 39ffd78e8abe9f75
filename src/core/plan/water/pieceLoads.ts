import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type FireOfLoad, fireOfLoad } from "../../methods/fireOfLoad.ts";
import { piecesHeld } from "../../methods/piecesHeld.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { loadsOf, type TimedStep } from "../../rounds/timedSteps.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";
import type { WaterNeed } from "../../water/batch.ts";
import { type PieceFire, pieceFire } from "../methods/pieceFire.ts";
import type { RoundPlan } from "../rounds/roundPlans.ts";

export type FireMethod = "boiling" | "steam";

/** A load of pieces that a round boils or steams. */
export interface PieceLoad {
	readonly round: RoundPlan;
	readonly method: FireMethod;
	readonly fire: PieceFire;
	readonly need: Figure<WaterNeed>;
}

const needOfPieces = calculation<
	{
		steps: readonly TimedStep[];
		method: FireMethod;
		load: number;
		fire: FireOfLoad;
		midnight: number;
	},
	WaterNeed
>({
	key: "water_of_pieces",
	label: say`Water for a load of pieces`,
	unit: "L",
	formula: say`At a rolling boil, or in steam, when the step of the round that times it begins; on the fire until the time wanted is over. A step that heats and holds in one is held at its end.`,
	source: commonPractice,
	inputs: {
		steps: { label: say`Steps of the round by the clock`, unit: "" },
		method: { label: say`Method`, unit: "" },
		load: { label: say`Which load`, unit: "" },
		fire: { label: fireOfLoad.label, unit: "" },
		midnight: {
			label: say`Midnight of the round's day`,
			unit: say`minutes after the plan's first midnight`,
		},
	},
	example: {
		inputs: {
			steps: [
				{
					step: "heat",
					startsAt: 450,
					endsAt: 480,
					handsOn: "no",
					kits: 3,
					load: 1,
					method: "boiling",
				},
				{
					step: "boil",
					startsAt: 480,
					endsAt: 500,
					handsOn: "no",
					kits: 3,
					load: 1,
					method: "boiling",
				},
			],
			method: "boiling",
			load: 1,
			fire: fireOfLoad.example.result,
			midnight: 1440,
		},
		result: { litres: 5, from: 1920, until: 1940, isForPieces: true },
		within: 0,
	},
	compute: ({ steps, method, load, fire, midnight }) => {
		const ofLoad = steps.filter((step) => step.method === method && step.load === load);
		const { from, until } = piecesHeld(ofLoad, fire.holdMinutes);
		return {
			litres: fire.litres,
			from: midnight + from,
			until: midnight + until,
			isForPieces: true,
		};
	},
});

/** The loads of pieces that a round boils or steams, in the order of its steps. */
export function pieceLoads(
	read: ReadWorkbook,
	round: RoundPlan,
	methods: readonly FireMethod[],
	firstDay: IsoDate,
): PieceLoad[] {
	const steps = valueIn(round.steps) ?? [];
	const day = daysFrom(firstDay, round.date);
	return methods.flatMap((method) => {
		const fire = pieceFire(read, method);
		// A round whose steps are not known is named once, with what it waits for.
		const loads = round.steps.outcome.ok ? loadsOf(steps, method) : 1;
		return Array.from({ length: loads }, (_, i) => ({
			round,
			method,
			fire,
			need: derive(needOfPieces, {
				steps: round.steps,
				method: nameFigure(say`Method`, method),
				load: nameFigure(say`Which load`, i + 1),
				fire: fire.fire,
				midnight: nameFigure(say`Midnight of the round's day`, day * MINUTES_PER_DAY),
			}),
		}));
	});
}
