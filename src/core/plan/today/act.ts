import type { Method } from "../../methods/method.ts";
import type { IsoDate } from "../../values/date.ts";
import type { LocalTime } from "../../values/dateTime.ts";

/** A step of a round by the ward's clock. */
export interface ActStep {
	readonly step: string;
	readonly from: LocalTime;
	readonly until: LocalTime;
	readonly isSoak: boolean;
	readonly isHandsOn: boolean;
}

/** A round of reprocessing, from its first step to its last. */
export interface RoundAct {
	readonly kind: "round";
	readonly at: LocalTime;
	readonly until: LocalTime;
	readonly round: string;
	/** Kits it is set aside for. */
	readonly kits: number;
	/** Kits that join although nobody used them, if they are still unused then. */
	readonly renew: string;
	readonly steps: readonly ActStep[];
}

/** A stove to be lit; its day is often the one before the round. */
export interface FireAct {
	readonly kind: "fire";
	/** The latest time. */
	readonly at: LocalTime;
	/** When the round begins that waits for the water, or when pieces should boil. */
	readonly until: LocalTime;
	readonly round: string;
	readonly forDate: IsoDate;
	readonly litres: number;
	readonly fuel: number;
	readonly fuelMeasure: string;
	/** Which pots, by number; "" where it does not matter. */
	readonly pots: string;
	/** "" where it is lit in any case. */
	readonly onlyIf: string;
	/** How a load of pieces is disinfected on it; null where water is boiled to rinse with. */
	readonly pieces: Method | null;
	/** From a rolling boil, or from when steam comes. */
	readonly holdMinutes: number;
}

/** One preparation of chlorine solution; ready when the first soak begins, or the round where nothing is soaked. */
export interface MixAct {
	readonly kind: "mix";
	readonly at: LocalTime;
	/** When it must be ready. */
	readonly until: LocalTime;
	readonly round: string;
	readonly product: string;
	/** Blank where it goes by the label. */
	readonly lot: string;
	readonly litres: number;
	readonly quantity: number;
	readonly measure: string;
	readonly waterLitres: number;
	readonly isOfBoiledWater: boolean;
}

/** Something to do, from the plan, on the ward's own clock. */
export type Act = RoundAct | FireAct | MixAct;
