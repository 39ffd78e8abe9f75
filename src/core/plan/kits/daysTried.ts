import { allOf, type Figure, listOf } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import type { DayDemand } from "../dayDemand.ts";
import { DAYS_BEFORE, DemandOfDays, type UsedDay } from "../demandOfDays.ts";
import type { UnitFigures } from "../unitFigures.ts";

/** The days of a plan, to try other rounds on them: births and kits used stay as they are. */
export class DaysTried {
	readonly days: readonly DayDemand[];
	readonly #used: readonly UsedDay[];
	/** For each day the first that brings the same, and the days before it too. */
	readonly #firstLike: readonly number[];

	constructor(days: readonly DayDemand[]) {
		this.days = days;
		this.#used = days.map(({ date, births, level, kinds }) => ({
			date,
			births,
			level,
			uses: kinds.map(({ uses }) => uses),
		}));
		this.#firstLike = firstLike(this.#used);
	}

	/** The rounds of the days, as a unit would do them; of days that are alike they are worked out once, unless somebody asks why. */
	roundsBy(unit: UnitFigures): Figure<RoundsOfDay[]> {
		const demand = new DemandOfDays(unit, this.#used);
		const known = new Map<number, Figure<RoundsOfDay>>();
		const rounds = this.#firstLike.map((first, d) => {
			const ofFirst = known.get(first) ?? demand.rounds(first);
			known.set(first, ofFirst);
			// What has no answer has reasons of its own.
			return ofFirst.outcome.ok ? ofFirst : demand.rounds(d);
		});
		return listOf(say`Kits in each round, average`, say`kits`, allOf(rounds), () =>
			Object.fromEntries(this.#used.map(({ date }, d) => [date, demand.rounds(d)])),
		);
	}
}

function firstLike(days: readonly UsedDay[]): number[] {
	const brings = days.map(({ level, uses }, d) => {
		const values = uses.map(valueIn);
		const isKnown = !values.includes(undefined);
		return isKnown ? [...values, ...Object.values((level && valueIn(level)) ?? {})].join() : `${d}`;
	});
	const first = new Map<string, number>();
	return days.map((_, d) => {
		if (d < DAYS_BEFORE) return d;
		const like = brings.slice(d - DAYS_BEFORE, d + 1).join(";");
		const known = first.get(like) ?? d;
		first.set(like, known);
		return known;
	});
}
