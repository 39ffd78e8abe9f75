import { say } from "../../../core/say.ts";

/** What can hurt someone in a day's work; short, for the plan and its printed page. */
export const dayCautions: readonly string[] = [
	say.safety`Chlorine and vinegar never in the same basin, and never one after the other without a rinse; nor chlorine with ammonia, urine or a second chlorine product.`,
	say.safety`Product into water; good ventilation, windows open; gloves, eye protection, apron.`,
	say.safety`Boiling water scalds: carry it covered, keep children away, let it cool before hands go in.`,
	say.safety`Label every mixed solution with date, time and discard time.`,
];
