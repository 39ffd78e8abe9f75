import { say } from "../say.ts";

/** Pots by their numbers, as the fires have them. @example "2" → in pot 2; "1, 2" → in pots 1, 2 */
export function inPots(pots: string): string {
	return pots.includes(",") ? say`in pots ${pots}` : say`in pot ${pots}`;
}
