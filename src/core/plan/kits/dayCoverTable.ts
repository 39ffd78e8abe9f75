import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { oneByOne } from "../../kits/cover.ts";
import { type ReadyAt, readyAt } from "../../kits/readyAt.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import { dayCoverSheet } from "../../sheets/dayCover.ts";
import { sources } from "../../sources.ts";
import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../../values/clock.ts";
import { byDate } from "../byDate.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { CoverFigures, KindCover } from "./coverFigures.ts";

interface Inputs {
	readonly kits: number;
	readonly reprocessing: Reprocessing;
	readonly births: readonly number[];
	readonly hour: number;
}

const moment = calculation<Inputs, ReadyAt>({
	key: "moment",
	label: say`Kits at half past the hour`,
	unit: say`kits`,
	formula: say`As for “How many kits are enough”: out of reach are the kits of a round under way, those used since it began, and those gone out of date (after each use: those that wait for somebody or are worked on). Ready are the kits in service less those; none is ready with the chance that at least as many are out of reach. The day with most births counts.`,
	source: sources.palm,
	inputs: {
		kits: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		reprocessing: { label: say`When used kits come back`, unit: "" },
		births: { label: say`Births`, unit: say`births` },
		hour: { label: say`Hour`, unit: "h", min: 0, max: 23 },
	},
	example: {
		// A mean of 1 × 144 ÷ 1440 kits out of reach: none with 0.904837, at most one with 0.995321.
		inputs: {
			kits: 2,
			reprocessing: { ...oneByOne, usesPerDay: [1440 / 1100] },
			births: [10],
			hour: 12,
		},
		result: { ready: 0.904837 + 0.995321, nonePer1000: 4.67884 },
		within: 1e-5,
	},
	compute: ({ kits, reprocessing, births, hour }) => {
		const busiest = births.indexOf(Math.max(...births));
		const halfPast = busiest * MINUTES_PER_DAY + (hour + 0.5) * MINUTES_PER_HOUR;
		return readyAt(kits, reprocessing, halfPast);
	},
});

const ready = partOf<ReadyAt, "ready">(moment, "ready", say`Kits ready, average`, say`kits`);
const none = partOf<ReadyAt, "nonePer1000">(
	moment,
	"nonePer1000",
	say`Times no kit is ready when needed`,
	say`per 1\u202f000 at that hour`,
);
const HOURS = 24;

/** Each hour of the plan's busiest day, for each kind of kit. */
export function dayCoverTable(
	cover: CoverFigures,
	days: readonly DayFigures[],
): ComputedTable<typeof dayCoverSheet> {
	return onDemand(dayCoverSheet, () => {
		const births = byDate(say`Births`, say`births`, days, (day) => day.births);
		return cover.kinds.flatMap((kind) => hoursOf(kind, births));
	});
}

function hoursOf(kind: KindCover, births: Figure<number[]>): ComputedRow<typeof dayCoverSheet>[] {
	return Array.from({ length: HOURS }, (_, h) => {
		const hour = nameFigure(say`Hour`, h);
		const at = derive(moment, {
			kits: kind.kitsInService,
			reprocessing: kind.reprocessing,
			births,
			hour,
		});
		return {
			kind: nameFigure(say`Kind`, kind.name),
			hour,
			ready_expected: derive(ready, { whole: at }),
			none_ready_per_1000: derive(none, { whole: at }),
		};
	});
}
