import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { leastUnmetPer1000 } from "../../kits/unmetPer1000.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { lateRounds } from "../rounds/turnaroundMinutes.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Change } from "./changes.ts";
import { type CoverFigures, coverFigures, type KindCover } from "./coverFigures.ts";
import type { DaysTried } from "./daysTried.ts";
import { roundLengthOf } from "./renewedOf.ts";
import { usesComeBack } from "./reprocessingOver.ts";

const kitsThen = calculation<{ kits: number; more: number }, number>({
	key: "kits_then",
	label: say`Kits in service`,
	unit: say`kits`,
	formula: say`Kits in service now, and those added.`,
	source: definition,
	inputs: {
		kits: { label: say`Kits in service`, unit: say`kits`, min: 0 },
		more: { label: say`Kits more`, unit: say`kits`, min: 0 },
	},
	example: { inputs: { kits: 4, more: 1 }, result: 5, within: 0 },
	compute: ({ kits, more }) => kits + more,
});

/** A change, and what it would mean for the kits: of the hours tried for a round few are worked out whole. */
export class Lever {
	readonly change: Change;
	readonly #tried: DaysTried;
	/** Once it is worked out. */
	#cover: CoverFigures | undefined;

	/** @param tried the days and @param cover of the unit as it is */
	constructor(change: Change, unit: UnitFigures, tried: DaysTried, cover: CoverFigures) {
		this.change = change;
		this.#tried = tried;
		if (change.unit === unit) this.#cover = cover;
	}

	/** False where not even a round with a single kit ends before the next begins: kits then never come back in time. */
	get couldFit(): boolean {
		const { unit } = this.change;
		const [length, rounds] = [valueIn(roundLengthOf(unit)), valueIn(unit.timetable.rounds)];
		return unit.afterEachUse || !length || !rounds || lateRounds(rounds, length, []).length === 0;
	}

	get cover(): CoverFigures {
		const { unit } = this.change;
		this.#cover ??= coverFigures(unit, this.#tried.days, this.#tried.roundsBy(unit));
		return this.#cover;
	}

	kind(kind: number): KindCover {
		return this.cover.kinds[kind] as KindCover;
	}

	/** Kits of a kind in service, with those more. */
	kits(kind: number): Figure {
		const { unit, moreKits } = this.change;
		const { kitsInService } = unit.kinds[kind] as UnitFigures["kinds"][number];
		return derive(kitsThen, {
			kits: kitsInService,
			more: nameFigure(say`Kits more`, moreKits),
		});
	}

	/**
	 * Never more than the uses of 1,000 that then find no kit ready, and found sooner; 0 where nothing is known.
	 * Once its rounds are worked out, for another kind, the closer one is as soon.
	 */
	leastUnmet(kind: number): number {
		const short = this.#cover ? undefined : usesComeBack(this.change.unit, kind, this.#tried.days);
		return this.#leastUnmet(kind, short ?? this.kind(kind).reprocessing);
	}

	/** The same, closer where there are several kinds: with the rounds as long as they would be. */
	leastUnmetInRounds(kind: number): number {
		const isClose = this.change.unit.kinds.length === 1;
		return isClose ? 0 : this.#leastUnmet(kind, this.kind(kind).reprocessing);
	}

	#leastUnmet(kind: number, comeBack: Figure<Reprocessing>): number {
		const [kits, reprocessing] = [valueIn(this.kits(kind)), valueIn(comeBack)];
		return kits === undefined || !reprocessing ? 0 : leastUnmetPer1000(kits, reprocessing);
	}
}
