/** A unit whose truth is known: what its plan is told, and what then happens in it. */
export interface Unit {
	readonly name: string;
	/** Kits used per 100 births. */
	readonly kitsPer100: number;
	readonly kits: number;
	readonly reprocessing: "in_rounds" | "after_each_use";
	/** Minutes after midnight at which rounds start. */
	readonly starts: readonly number[];
	/** Minutes of a round: once, for each kit, for each load. */
	readonly minutes: { readonly round: number; readonly kit: number; readonly load: number };
	readonly kitsInLoad: number;
	readonly readyLifeDays: number;
	/** People who work on kits as they come, or as many as there is work for. */
	readonly hands: 1 | "without limit";
	/** Twice as many births between 22:00 and 6:00 as by day. */
	readonly nights: boolean;
}

export const HOURS = 24;
export const DAY = 24 * 60;

/** Share of the day's births in each hour. */
export function hourWeights({ nights }: Unit): readonly number[] {
	return Array.from({ length: HOURS }, (_, hour) => (nights && (hour < 6 || hour >= 22) ? 2 : 1));
}

/** Minutes from the start of a round with some kits to their being ready. */
export function roundMinutes({ minutes, kitsInLoad }: Unit, kits: number): number {
	return minutes.round + minutes.kit * kits + minutes.load * Math.ceil(kits / kitsInLoad);
}
