import { derive, type Figure } from "../calculation.ts";
import type { Preparation } from "../chlorine/measureOut.ts";
import type { Counts } from "../counts/counts.ts";
import { memoized } from "../memoize.ts";
import { roundsThatRun } from "../rounds/roundsThatRun.ts";
import { say } from "../say.ts";
import type { IsoDate } from "../values/date.ts";
import { preparationInUse } from "./chlorine/lotPreparation.ts";
import type { LoadsByMethod } from "./countFigures.ts";
import type { DayDemand, KindOfDay } from "./dayDemand.ts";
import { together } from "./kits/together.ts";
import { loadsOn, preparationsOn } from "./rounds/loadsOn.ts";
import type { UnitFigures } from "./unitFigures.ts";

const running = memoized(roundsThatRun);

/** What follows from a day's births and rounds. */
export interface CountsOfDay {
	/** All kinds together. */
	readonly kitUses: Figure;
	readonly expiries: Figure;
	readonly toReprocess: Figure;
	readonly roundCounts: Figure<Counts>;
	/** Of each method that some kit goes by. */
	readonly loadCounts: LoadsByMethod<Figure<Counts>>;
	readonly preparationCounts: Figure<Counts>;
	/** One preparation with the product in use, from the lot to use first that day. */
	readonly preparation: Figure<Preparation>;
}

/** What follows from a day is worked out when it is asked for: how many kits are enough is looked for without it, for each of many changes. */
export class CountedDay implements DayDemand, CountsOfDay {
	readonly date: IsoDate;
	readonly births: Figure;
	readonly level: DayDemand["level"];
	readonly kinds: readonly KindOfDay[];
	readonly rounds: DayDemand["rounds"];
	readonly #unit: UnitFigures;
	#counts: CountsOfDay | undefined;

	constructor(unit: UnitFigures, { date, births, level, kinds, rounds }: DayDemand) {
		this.#unit = unit;
		this.date = date;
		this.births = births;
		this.level = level;
		this.kinds = kinds;
		this.rounds = rounds;
	}

	get kitUses() {
		return this.#counted.kitUses;
	}

	get expiries() {
		return this.#counted.expiries;
	}

	get toReprocess() {
		return this.#counted.toReprocess;
	}

	get roundCounts() {
		return this.#counted.roundCounts;
	}

	get loadCounts() {
		return this.#counted.loadCounts;
	}

	get preparationCounts() {
		return this.#counted.preparationCounts;
	}

	get preparation() {
		return this.#counted.preparation;
	}

	get #counted(): CountsOfDay {
		this.#counts ??= countedDay(this.#unit, this);
		return this.#counts;
	}
}

function countedDay(unit: UnitFigures, { date, kinds, rounds }: DayDemand): CountsOfDay {
	return {
		kitUses: together(kinds, say`Kits used, average`, say`kits`, (kind) => kind.uses),
		expiries: together(
			kinds,
			say`Kits gone out of date, average`,
			say`kits`,
			(kind) => kind.expiries,
		),
		toReprocess: together(
			kinds,
			say`Kits to reprocess, average`,
			say`kits`,
			(kind) => kind.toReprocess,
		),
		roundCounts: derive(running, { rounds }),
		loadCounts: loadsOn(unit, rounds),
		preparationCounts: preparationsOn(unit, rounds),
		preparation: preparationInUse(unit, date),
	};
}
