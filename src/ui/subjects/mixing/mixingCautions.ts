import { say } from "../../../core/say.ts";

/** What can hurt someone where chlorine is mixed. */
export const mixingCautions: readonly string[] = [
	say`Never let chlorine meet vinegar or any acid, or ammonia or urine: poisonous gas.`,
	say`Never two chlorine products in one vessel or by one scoop: fire or poisonous gas.`,
	say`Product into water, never water onto product.`,
	say`Open the windows or work outside; gloves, eye protection and apron on.`,
	say`Label it at once: date, time mixed, discard time. Keep it from children, heat and light.`,
];
