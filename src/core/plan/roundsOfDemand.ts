import { derive, type Figure, gather, nameFigure } from "../calculation.ts";
import { memoized, sameObject } from "../memoize.ts";
import { kitsWithWater } from "../rounds/kitsWithWater.ts";
import {
	kitsAfterEachUse,
	kitsInRounds,
	type RoundsOfDay,
	roundsOfForecast,
	roundsTogether,
} from "../rounds/roundsOfDay.ts";
import { say } from "../say.ts";
import { addDays, type IsoDate } from "../values/date.ts";
import type { DayDemand, KindOfDay } from "./dayDemand.ts";
import type { UnitFigures } from "./unitFigures.ts";

const arrivals = memoized(kitsInRounds);
const arrivalsWithWater = sameObject(kitsWithWater, ({ starts, hourShares, uses, ...others }) => [
	starts,
	hourShares,
	...Object.values(others),
	...uses,
]);
const ofAllKinds = sameObject(roundsTogether, ({ kinds }) => kinds);
const forecastRounds = memoized(roundsOfForecast);

type BirthsAndKits = Pick<DayDemand, "date" | "level" | "kinds">;

/** The rounds of a day; where its births or those of the evening before are forecast, they say so. */
export function roundsOfDemand(
	unit: UnitFigures,
	water: Figure | undefined,
	today: BirthsAndKits,
	before: readonly BirthsAndKits[],
): Figure<RoundsOfDay> {
	const rounds = roundsOfKinds(
		unit,
		water,
		today,
		before.map(({ kinds }) => kinds),
	);
	const lastKnown = before.findLast(({ level }) => level)?.level;
	const ofBefore = water ? lastKnown : (before.at(-1) as BirthsAndKits).level;
	const level = today.level ?? (unit.afterEachUse ? undefined : ofBefore);
	if (!level) return rounds;
	const sureToday = { ...today, kinds: sureOf(today) };
	const sure = roundsOfKinds(unit, water, sureToday, before.map(sureOf));
	return derive(forecastRounds, { rounds, sure, level });
}

const none = nameFigure(say`Kits used, not by the forecast`, 0);

/** What of a day does not go by the forecast. */
function sureOf({ level, kinds }: BirthsAndKits): readonly KindOfDay[] {
	return level ? kinds.map((kind) => ({ ...kind, uses: none, toReprocess: kind.expiries })) : kinds;
}

/** Rounds carry the kits of all kinds. The day before the plan is like its first day. */
function roundsOfKinds(
	unit: UnitFigures,
	water: Figure | undefined,
	{ date, kinds }: BirthsAndKits,
	before: readonly (readonly KindOfDay[])[],
): Figure<RoundsOfDay> {
	const each = kinds.map((kind, k) =>
		roundsOfKind(
			unit,
			water,
			date,
			kind,
			before.map((day) => day[k] as KindOfDay),
		),
	);
	if (each.length === 1) return each[0] as Figure<RoundsOfDay>;
	const named = Object.fromEntries(
		kinds.map((kind, k) => [kind.name, each[k] as Figure<RoundsOfDay>]),
	);
	return derive(ofAllKinds, {
		kinds: gather(say`Kits in each round, by kind`, say`kits`, named),
	});
}

function roundsOfKind(
	unit: UnitFigures,
	water: Figure | undefined,
	date: IsoDate,
	today: KindOfDay,
	before: readonly KindOfDay[],
): Figure<RoundsOfDay> {
	if (unit.afterEachUse) return derive(kitsAfterEachUse, { kits: today.toReprocess });
	const yesterday = before.at(-1) as KindOfDay;
	if (water) {
		// By date, and not by how many days before: an object puts names that are whole numbers first.
		const each = [...before, today].map(
			({ uses }, i) => [addDays(date, i - before.length), uses] as const,
		);
		return derive(arrivalsWithWater, {
			starts: unit.timetable.starts,
			hourShares: unit.hourShares,
			uses: gather(say`Kits used, average, day by day`, say`kits/day`, Object.fromEntries(each)),
			expiriesYesterday: yesterday.expiries,
			expiriesToday: today.expiries,
			waterMinutes: water,
		});
	}
	return derive(arrivals, {
		starts: unit.timetable.starts,
		hourShares: unit.hourShares,
		usesYesterday: yesterday.uses,
		usesToday: today.uses,
		expiriesYesterday: yesterday.expiries,
		expiriesToday: today.expiries,
	});
}
