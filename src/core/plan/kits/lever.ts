import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { leastUnmetPer1000 } from "../../kits/unmetPer1000.ts";
import { onceAsked } from "../../onceAsked.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { type DayFigures, daysWith } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Change } from "./changes.ts";
import { type CoverFigures, coverFigures, type KindCover, usesComeBack } from "./coverFigures.ts";

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
	readonly #days: readonly DayFigures[];
	readonly #cover: () => CoverFigures;

	/** @param days and @param cover of the unit as it is */
	constructor(change: Change, unit: UnitFigures, days: readonly DayFigures[], cover: CoverFigures) {
		this.change = change;
		this.#days = days;
		this.#cover = onceAsked(() =>
			change.unit === unit ? cover : coverFigures(change.unit, daysWith(change.unit, days)),
		);
	}

	get cover(): CoverFigures {
		return this.#cover();
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

	/** Never more than the uses of 1,000 that then find no kit ready, and found sooner; 0 where nothing is known. */
	leastUnmet(kind: number): number {
		const { unit } = this.change;
		const kits = valueIn(this.kits(kind));
		const reprocessing = valueIn(usesComeBack(unit, this.#days) ?? this.kind(kind).reprocessing);
		return kits === undefined || !reprocessing ? 0 : leastUnmetPer1000(kits, reprocessing);
	}
}
