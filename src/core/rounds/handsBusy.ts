import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { MINUTES_PER_HOUR } from "../values/clock.ts";

interface Inputs {
	readonly usesPerDay: number;
	readonly workMinutes: number;
	readonly workerHoursADay: number;
	readonly people: number;
}

/** From this share of their time on, those who reprocess have little left for anything that goes wrong. */
export const BUSY = 0.8;

/** How much of their time those who reprocess kits one by one are busy; more than 1 cannot be done. */
export const handsBusy = calculation<Inputs, number>({
	key: "hands_busy",
	label: say`Share of their time people are busy with kits`,
	unit: say`share`,
	formula: say`Kits used a day × minutes a person is busy with one ÷ (${MINUTES_PER_HOUR} × hours a day someone can work on kits × people).`,
	source: definition,
	inputs: {
		usesPerDay: { label: say`Kit uses a day`, unit: say`kits/day`, min: 0 },
		workMinutes: { label: say`Minutes a person is busy with a kit`, unit: "min", min: 0 },
		workerHoursADay: {
			label: say`Hours a day someone can work on kits`,
			unit: "h",
			min: 0.01,
			max: 24,
		},
		people: { label: say`People who reprocess kits`, unit: say`people`, min: 1 },
	},
	example: {
		inputs: { usesPerDay: 7.5, workMinutes: 110, workerHoursADay: 24, people: 1 },
		result: 0.572917,
		within: 1e-6,
	},
	compute: ({ usesPerDay, workMinutes, workerHoursADay, people }) =>
		(usesPerDay * workMinutes) / (MINUTES_PER_HOUR * workerHoursADay * people),
});
