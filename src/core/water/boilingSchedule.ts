import { calculation } from "../calculation.ts";
import { memoize } from "../memoize.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import { alikeBatches, type Batch, batchesOf, type Hearth, type WaterNeed } from "./batch.ts";
import { type Fire, firesOf } from "./firesOf.ts";
import { haveRoom } from "./haveRoom.ts";
import { onTheFire } from "./onTheFire.ts";
import { placedBatches } from "./placedBatches.ts";

/** Every fire of a plan by the clock. */
export interface Schedule {
	readonly fires: readonly Fire[];
	/** Needs for whose water there is no stove or no pot in time. */
	readonly without: readonly number[];
}

/** Fires for all needs, pots side by side; where that cannot be, one pot after the other, which frees each sooner. */
export function scheduleOf(needs: readonly WaterNeed[], hearth: Hearth): Schedule {
	const sideBySide = scheduled(needs, hearth);
	if (sideBySide.without.length === 0 || hearth.potsOnStove === 1) return sideBySide;
	const oneByOne = scheduled(needs, { ...hearth, potsOnStove: 1 });
	return oneByOne.without.length < sideBySide.without.length ? oneByOne : sideBySide;
}

function scheduled(needs: readonly WaterNeed[], hearth: Hearth): Schedule {
	const { placed, without } = placedBatches(batchesFor(needs, hearth), hearth);
	return { fires: firesOf(placed, hearth), without };
}

function batchesFor(needs: readonly WaterNeed[], hearth: Hearth): Batch[] {
	return needs.flatMap((need, i) => batchesOf(need, i, hearth));
}

/** Whether there are fires for all needs; quicker than to find them. */
export function canBeScheduled(needs: readonly WaterNeed[], hearth: Hearth): boolean {
	const does = (tried: Hearth) => {
		const alike = needs.flatMap((need, i) => alikeBatches(need, i, tried));
		if (!haveRoom(alike, tried)) return false;
		return placedBatches(batchesFor(needs, tried), tried, true).without.length === 0;
	};
	return does(hearth) || (hearth.potsOnStove > 1 && does({ ...hearth, potsOnStove: 1 }));
}

/** Schedules kept: that of the workbook, and those of what is tried beside it. */
const MOST_SCHEDULES = 8;

/** Most edits leave the water of every round as it was. */
const scheduleOnce = memoize(
	scheduleOf,
	(needs, hearth) => [JSON.stringify([needs, hearth])],
	MOST_SCHEDULES,
);

interface Inputs extends Hearth {
	readonly needs: readonly WaterNeed[];
}

/** 20 L for 9:00: 10 L by 75 °C at 1.0465 kW are 50 minutes; 100 minutes, 1 of hold and 440 of cooling before. */
const example: Inputs = {
	needs: [{ litres: 20, from: 540, until: 560 }],
	stoves: 1,
	pots: 2,
	potsOnStove: 2,
	potLitres: 10,
	netKw: 1.0465,
	drawnC: 25,
	boilingC: 100,
	holdMinutes: 0,
	coolMinutes: 440,
	keepsMinutes: 1440,
};

/** When each fire is lit, on which stove and with which pots. */
export const boilingSchedule = calculation<Inputs, Schedule>({
	key: "boiling_schedule",
	label: say`Fires by the clock`,
	unit: "",
	formula: say`The water of the last round first, each as late as stoves and pots allow: a stove is taken from lighting to the end of the hold, a pot from filling until its water is cool. It has cooled by the first rinse and is not too old at the end of the last one. Where a batch finds no place, it is tried in every order with those after it; and one pot after the other where side by side does not go.`,
	source: commonPractice,
	caution: say.safety`It is often the evening before: look at the date.`,
	inputs: {
		needs: { label: say`Water of each round`, unit: "L" },
		...onTheFire,
		keepsMinutes: { label: say`Boiled water may be used for`, unit: "min", min: 0 },
	},
	example: {
		inputs: example,
		result: {
			fires: [
				{
					need: 0,
					stove: 1,
					pots: [1, 2],
					litres: 20,
					startLitres: 20,
					batches: 1,
					heatMinutes: 100,
					kj: 6279,
					lightAt: 0,
					offBoilAt: 100,
					coolAt: 540,
					taken: [
						{ pot: 1, from: 0, to: 540 },
						{ pot: 2, from: 0, to: 540 },
					],
				},
			],
			without: [],
		},
		within: 1e-9,
	},
	compute: ({ needs, ...hearth }) => scheduleOnce(needs, hearth),
});
