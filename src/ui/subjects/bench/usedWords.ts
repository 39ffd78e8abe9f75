import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { shownTime } from "../../format/moment.ts";

/** What a use that was written down came to. @param today by the page: a kit used on a later day is still ready on it */
export function usedWords(
	kit: string,
	what: "used" | "opened",
	at: LocalTime,
	today: IsoDate,
): string {
	const when = shownTime(at);
	if (at.date > today)
		return say`Kit ${kit} is written down for ${when}, a day to come: until then it counts as it did. Where the day is a slip, take it back.`;
	return what === "used"
		? say`Kit ${kit} was used: ${when}. It waits for a round.`
		: say`Kit ${kit} was opened: ${when}. It waits for a round.`;
}
