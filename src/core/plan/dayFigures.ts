import { derive, type Figure } from "../calculation.ts";
import { expiriesPerDay } from "../kits/expiriesPerDay.ts";
import { kitsToReprocess } from "../kits/kitsToReprocess.ts";
import { kitUses } from "../kits/kitUses.ts";
import { memoizeByObject } from "../memoize.ts";
import { valueIn } from "../outcome.ts";
import type { ReadTable } from "../read/goodRow.ts";
import { say } from "../say.ts";
import type { BirthsRow } from "../sheets/births.ts";
import type { IsoDate } from "../values/date.ts";
import { birthsOfDay } from "./births/birthsOfDay.ts";
import { byDate } from "./byDate.ts";
import { CountedDay, type CountsOfDay } from "./countedDay.ts";
import type { DayDemand, KindOfDay } from "./dayDemand.ts";
import type { KindFigures } from "./kits/kindFigures.ts";
import { minutesCountedOnOf, renewedOf } from "./kits/renewedOf.ts";
import { together } from "./kits/together.ts";
import { isSentAway } from "./methods/readyLifeDaysOf.ts";
import { roundsOfDemand } from "./roundsOfDemand.ts";
import type { UnitFigures } from "./unitFigures.ts";
import { minutesKitsWait } from "./water/hearthFigures.ts";

/** Water for a round is rarely begun longer before it. */
const DAYS_BEFORE = 3;

/** What one day brings, before anything is set aside for it. */
export type DayFigures = DayDemand & CountsOfDay;

/** Births and rounds of days that follow each other. */
export function dayDemands(unit: UnitFigures, dates: readonly IsoDate[]): DayDemand[] {
	return demandsOf(unit, usedDays(unit, dates));
}

function usedDays(unit: UnitFigures, dates: readonly IsoDate[]): UsedDay[] {
	const { births_per_day } = unit.read.settings;
	return dates.map((date) => {
		const own = ownBirths(unit.read.tables.births)(date);
		const { mean: births, level } = birthsOfDay(date, own, unit.forecast, births_per_day);
		const uses = unit.kinds.map(({ usesPer100Births }) =>
			derive(kitUses, { births, kitsPer100Births: usesPer100Births }),
		);
		return { date, births, level, uses };
	});
}

/** What the kits used on some days are for a unit's rounds. */
function demandsOf(unit: UnitFigures, used: readonly UsedDay[]): DayDemand[] {
	const expiries = unit.kinds.map((kind, k) => expiriesOf(unit, kind, k, used));
	const water = minutesKitsWait(unit);
	const days: DayDemand[] = [];
	for (const [d, { date, births, level, uses }] of used.entries()) {
		const kinds = unit.kinds.map(({ name }, k) =>
			kindOfDay(name, uses[k] as Figure, (expiries[k] as readonly Figure[])[d] as Figure),
		);
		const day = { date, births, level, kinds };
		const before = days.slice(-DAYS_BEFORE);
		days.push({
			...day,
			rounds: roundsOfDemand(unit, water, day, before.length > 0 ? before : [day]),
		});
	}
	return days;
}

/** The sheet with the row of one day only: a plan of a year would search all of it for each of its days. */
const ownBirths = memoizeByObject((table: ReadTable<BirthsRow>) => {
	const rows = new Map(table.rows.map((row) => [row.value.date, row]));
	return (date: IsoDate): ReadTable<BirthsRow> => {
		const row = rows.get(date);
		return { ...table, rows: row ? [row] : [] };
	};
});

/** The figures of every day of the plan, in order. */
export function dayFigures(unit: UnitFigures, dates: readonly IsoDate[]): DayFigures[] {
	return withCounts(unit, dayDemands(unit, dates));
}

/** The figures of days as they would be with other rounds, or more people in them: births and uses stay. */
export function daysWith(unit: UnitFigures, days: readonly DayDemand[]): DayFigures[] {
	const used = days.map(({ kinds, ...day }) => ({ ...day, uses: kinds.map(({ uses }) => uses) }));
	return withCounts(unit, demandsOf(unit, used));
}

/** The demands of days with what follows from them. */
export function withCounts(unit: UnitFigures, days: readonly DayDemand[]): DayFigures[] {
	return days.map((day) => new CountedDay(unit, day));
}

interface UsedDay extends Pick<DayDemand, "date" | "births" | "level"> {
	/** Of each kind. */
	readonly uses: readonly Figure[];
}

/** Kits of a kind that go out of date or are renewed in time, on each day: in rounds, as many on all of them. */
function expiriesOf(
	unit: UnitFigures,
	kind: KindFigures,
	k: number,
	days: readonly UsedDay[],
): Figure[] {
	const { kitsInService, readyLifeDays } = kind;
	const treated = valueIn(kind.treated);
	if (unit.afterEachUse || (treated && isSentAway(treated)))
		return days.map(({ uses }) =>
			derive(expiriesPerDay, { kitsInService, usesPerDay: uses[k] as Figure, readyLifeDays }),
		);
	// A day that cannot be read leaves the others as they are.
	const known = days.filter(({ uses }) => uses.every((figure) => figure.outcome.ok));
	const from = known.length > 0 ? known : days;
	const label = say`Kits used, average`;
	const usesOf = (of: (day: UsedDay) => Figure) => byDate(label, say`kits`, from, of);
	const minutes = minutesCountedOnOf(
		unit,
		usesOf(({ uses }) => allKinds(unit, uses)),
	);
	const renewed = renewedOf(
		unit,
		kind,
		usesOf(({ uses }) => uses[k] as Figure),
		minutes,
	);
	return days.map(() => renewed);
}

/** Uses of all kinds on a day. */
function allKinds({ kinds }: UnitFigures, uses: readonly Figure[]): Figure {
	const each = kinds.map(({ name }, k) => ({ name, uses: uses[k] as Figure }));
	return together(each, say`Kits used, average`, say`kits`, (kind) => kind.uses);
}

function kindOfDay(name: string, uses: Figure, expiries: Figure): KindOfDay {
	return { name, uses, expiries, toReprocess: derive(kitsToReprocess, { uses, expiries }) };
}
