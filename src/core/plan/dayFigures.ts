import { birthsOfDay } from "../births/birthsOfDay.ts";
import { calculation, derive, type Figure } from "../calculation.ts";
import { preparationsOfDay } from "../chlorine/preparations.ts";
import type { Counts } from "../counts/counts.ts";
import { poissonCount } from "../counts/measures.ts";
import { expiriesPerDay } from "../kits/expiries.ts";
import { kitUses } from "../kits/kitUses.ts";
import {
	kitsAfterEachUse,
	kitsInRounds,
	loadsOfDay,
	type RoundsOfDay,
	roundsThatRun,
} from "../rounds/roundsOfDay.ts";
import { definition, sources } from "../sources.ts";
import type { IsoDate } from "../values/date.ts";
import type { UnitFigures } from "./unitFigures.ts";

/** What one day brings, before anything is set aside for it. */
export interface DayFigures {
	readonly date: IsoDate;
	readonly births: Figure;
	readonly birthCounts: Figure<Counts>;
	readonly kitUses: Figure;
	readonly expiries: Figure;
	readonly toReprocess: Figure;
	readonly toReprocessCounts: Figure<Counts>;
	readonly rounds: Figure<RoundsOfDay>;
	readonly roundCounts: Figure<Counts>;
	readonly loadCounts: Figure<Counts>;
	readonly preparationCounts: Figure<Counts>;
}

const birthCount = poissonCount("Births", "births", sources.poissonBirths);
const reprocessCount = poissonCount("Kits to reprocess", "kits", sources.thinning);

const kitsToReprocess = calculation<{ uses: number; expiries: number }, number>({
	key: "kits_to_reprocess_expected",
	label: "Kits to reprocess, expected",
	unit: "kits",
	formula: "Kits used + kits gone out of date.",
	source: definition,
	inputs: {
		uses: { label: "Kits used, expected", unit: "kits", min: 0 },
		expiries: { label: "Kits gone out of date, expected", unit: "kits", min: 0 },
	},
	compute: ({ uses, expiries }) => uses + expiries,
});

/** The figures of every day of the plan, in order. */
export function dayFigures(unit: UnitFigures, dates: readonly IsoDate[]): DayFigures[] {
	const days: DayFigures[] = [];
	for (const date of dates) days.push(oneDay(unit, date, days.at(-1)));
	return days;
}

function oneDay(unit: UnitFigures, date: IsoDate, yesterday: DayFigures | undefined): DayFigures {
	const { settings, tables } = unit.read;
	const births = birthsOfDay(date, tables.births, settings.births_per_day);
	const uses = derive(kitUses, { births, kitsPer100Births: settings.kits_used_per_100_births });
	const expiries = derive(expiriesPerDay, {
		kitsInService: unit.kitsInService,
		usesPerDay: uses,
		readyLifeDays: settings.ready_life_days,
	});
	const toReprocess = derive(kitsToReprocess, { uses, expiries });
	// The day before the plan is like its first day.
	const before = yesterday ?? { kitUses: uses, expiries };
	const rounds: Figure<RoundsOfDay> = unit.afterEachUse
		? derive(kitsAfterEachUse, { kits: toReprocess })
		: derive(kitsInRounds, {
				starts: unit.timetable.starts,
				hourShares: unit.hourShares,
				usesYesterday: before.kitUses,
				usesToday: uses,
				expiriesYesterday: before.expiries,
				expiriesToday: expiries,
			});
	return {
		date,
		births,
		birthCounts: derive(birthCount, { mean: births }),
		kitUses: uses,
		expiries,
		toReprocess,
		toReprocessCounts: derive(reprocessCount, { mean: toReprocess }),
		rounds,
		roundCounts: derive(roundsThatRun, { rounds }),
		loadCounts: derive(loadsOfDay, { rounds, kitsInLoad: unit.kitsInLoad }),
		preparationCounts: derive(preparationsOfDay, {
			rounds,
			made: settings.solution_made,
			lifeHours: settings.solution_life_hours,
		}),
	};
}
