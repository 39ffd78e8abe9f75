import { derive, type Figure } from "../calculation.ts";
import { expiriesPerDay } from "../kits/expiriesPerDay.ts";
import { kitsToReprocess } from "../kits/kitsToReprocess.ts";
import { memoizeByObject } from "../memoize.ts";
import { onceAsked } from "../onceAsked.ts";
import { valueIn } from "../outcome.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { say } from "../say.ts";
import { byDate } from "./byDate.ts";
import type { DayDemand, KindOfDay } from "./dayDemand.ts";
import type { KindFigures } from "./kits/kindFigures.ts";
import { minutesCountedOnOf, renewedOf } from "./kits/renewedOf.ts";
import { together } from "./kits/together.ts";
import { isSentAway } from "./methods/readyLifeDaysOf.ts";
import { roundsOfDemand } from "./roundsOfDemand.ts";
import type { UnitFigures } from "./unitFigures.ts";
import { minutesKitsWait } from "./water/hearthFigures.ts";

/** Water for a round is rarely begun longer before it: what further days brought is nothing to a day's rounds. */
export const DAYS_BEFORE = 3;

/** Births of a day and the kits they use. */
export interface UsedDay extends Pick<DayDemand, "date" | "births" | "level"> {
	/** Of each kind. */
	readonly uses: readonly Figure[];
}

/** What the kits used on days that follow each other are for a unit's rounds. */
export class DemandOfDays {
	readonly #unit: UnitFigures;
	readonly #used: readonly UsedDay[];
	readonly #expiries: readonly (readonly Figure[])[];
	readonly #water: Figure | undefined;
	readonly #days: Omit<DayDemand, "rounds">[] = [];

	constructor(unit: UnitFigures, used: readonly UsedDay[]) {
		this.#unit = unit;
		this.#used = used;
		const minutes = onceAsked(() => minutesCountedOnOf(unit, usesOver(used, unit.kinds).all));
		this.#expiries = unit.kinds.map((kind, k) => expiriesOf(unit, kind, k, used, minutes));
		this.#water = minutesKitsWait(unit);
	}

	get whole(): DayDemand[] {
		return this.#used.map((_, d) => ({ ...this.#day(d), rounds: this.rounds(d) }));
	}

	/** The rounds of a day, counted from 0. */
	rounds(d: number): Figure<RoundsOfDay> {
		const today = this.#day(d);
		const before = [today];
		for (let b = Math.max(0, d - DAYS_BEFORE); b < d; b++) before.push(this.#day(b));
		if (before.length > 1) before.shift();
		return roundsOfDemand(this.#unit, this.#water, today, before);
	}

	#day(d: number): Omit<DayDemand, "rounds"> {
		const known = this.#days[d];
		if (known) return known;
		const { date, births, level, uses } = this.#used[d] as UsedDay;
		const kinds = this.#unit.kinds.map(({ name }, k) =>
			kindOfDay(name, uses[k] as Figure, (this.#expiries[k] as readonly Figure[])[d] as Figure),
		);
		const day = { date, births, level, kinds };
		this.#days[d] = day;
		return day;
	}
}

/** Kits of a kind that go out of date or are renewed in time, on each day: in rounds, as many on all of them. */
function expiriesOf(
	unit: UnitFigures,
	kind: KindFigures,
	k: number,
	days: readonly UsedDay[],
	minutes: () => Figure,
): Figure[] {
	const { kitsInService, readyLifeDays } = kind;
	const treated = valueIn(kind.treated);
	if (unit.afterEachUse || (treated && isSentAway(treated)))
		return days.map(({ uses }) =>
			derive(expiriesPerDay, { kitsInService, usesPerDay: uses[k] as Figure, readyLifeDays }),
		);
	const uses = usesOver(days, unit.kinds).each[k] as Figure<number[]>;
	const renewed = renewedOf(unit, kind, uses, minutes());
	return days.map(() => renewed);
}

/** Kits used day by day, of each kind and of all together: the same for all changes that are tried on these days. */
const usesOver = memoizeByObject((days: readonly UsedDay[], kinds: readonly KindFigures[]) => {
	// A day that cannot be read leaves the others as they are.
	const known = days.filter(({ uses }) => uses.every((figure) => figure.outcome.ok));
	const from = known.length > 0 ? known : days;
	const label = say`Kits used, average`;
	const over = (of: (day: UsedDay) => Figure) => byDate(label, say`kits`, from, of);
	return {
		each: kinds.map((_, k) => over(({ uses }) => uses[k] as Figure)),
		all: over(({ uses }) => allKinds(kinds, uses)),
	};
});

/** Uses of all kinds on a day. */
function allKinds(kinds: readonly KindFigures[], uses: readonly Figure[]): Figure {
	const each = kinds.map(({ name }, k) => ({ name, uses: uses[k] as Figure }));
	return together(each, say`Kits used, average`, say`kits`, (kind) => kind.uses);
}

function kindOfDay(name: string, uses: Figure, expiries: Figure): KindOfDay {
	return { name, uses, expiries, toReprocess: derive(kitsToReprocess, { uses, expiries }) };
}
