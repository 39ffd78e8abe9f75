import { say } from "../../../core/say.ts";

/** What can hurt someone where chlorine is mixed. */
export const mixingCautions: readonly string[] = [
	say.safety`Never let chlorine meet vinegar or any acid, or ammonia or urine: poisonous gas.`,
	say.safety`Never two chlorine products in one vessel or by one scoop: fire or poisonous gas.`,
	say.safety`Product into water, never water onto product.`,
	say.safety`Open the windows or work outside; gloves, eye protection and apron on.`,
	say.safety`Label it at once: date, time mixed, discard time. Keep it from children, heat and light.`,
];
