import type { Method } from "../methods/method.ts";

/** What the minutes of a step are counted for. */
export const stepBases = ["round", "kit", "load"] as const;

/** One thing that is done in a round, and how long it takes. */
export interface Step {
	/** What is done. */
	readonly step: string;
	readonly basis: (typeof stepBases)[number];
	/** For one round, kit or load. */
	readonly minutes: number;
	/** "no" for waiting, such as the soak. */
	readonly hands_on: "yes" | "no";
	/** The method it belongs to; absent or null: whatever the method. */
	readonly method?: Method | null;
}
