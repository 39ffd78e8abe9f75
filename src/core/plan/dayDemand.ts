import type { Figure } from "../calculation.ts";
import type { LevelOfDay } from "../counts/counts.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import type { IsoDate } from "../values/date.ts";

/** What one day brings for one kind of kit. */
export interface KindOfDay {
	readonly name: string;
	readonly uses: Figure;
	readonly expiries: Figure;
	readonly toReprocess: Figure;
}

/** Births of a day and the kits they send through its rounds. */
export interface DayDemand {
	readonly date: IsoDate;
	readonly births: Figure;
	/** What a forecast does not know of the births; undefined where the figure is the unit's own. */
	readonly level: Figure<LevelOfDay> | undefined;
	/** Each kind of kit apart, in the order of the unit's kinds. */
	readonly kinds: readonly KindOfDay[];
	readonly rounds: Figure<RoundsOfDay>;
}
