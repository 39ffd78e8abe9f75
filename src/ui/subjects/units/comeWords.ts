import { say } from "../../../core/say.ts";
import { counted } from "../../format/counted.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { Come } from "./districtReading.ts";

/** How long the first units took says little of the others. */
const FEW = 10;
const MINUTE_MS = 60_000;

/** How far the reading has come, and how long it may still take where that is some minutes. */
export function comeWords({ read, all, ms }: Come): string {
	const words = say`${shownPlain(read)} of ${counted(all, "unit")} read and planned`;
	const minutes = Math.ceil(((ms / read) * (all - read)) / MINUTE_MS);
	if (read < FEW || minutes < 2) return words;
	return say`${words}; about ${counted(minutes, "minute")} more`;
}
