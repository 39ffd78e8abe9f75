import { valueIn } from "../../../core/outcome.ts";
import { type RoundBelow, roundsOverDays } from "../../../core/plan/record/roundsOverDays.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { shownPlain } from "../../format/shownNumber.ts";

/** What to do with the kits of a round that is written down: they are tested, or go through a round again where the soak was too short. */
export function afterRound(workbook: Workbook, date: IsoDate, start: string): string {
	const read = readWorkbook(workbook);
	const { shortSoaks, weakReadings } = roundsOverDays(read, [date]);
	const found = (rounds: readonly RoundBelow[] = []) =>
		rounds.find((round) => writeClock(round.start) === start)?.found;
	const [soak, reading] = [found(shortSoaks), found(weakReadings)];
	const shortest = valueIn(read.settings.soak_minutes);
	const target = valueIn(read.settings.target_strength_pct);
	return [
		soak === undefined || shortest === undefined
			? say`Test each kit before it counts as ready.`
			: say`The soak took ${shownPlain(soak)} min, and at least ${shownPlain(shortest)} are wanted: these kits go through a round again before they are used.`,
		reading !== undefined &&
			target !== undefined &&
			say`The strength read was ${shownPlain(reading)} %, and ${shownPlain(target)} % is wanted. A strip may be off by up to about half; see whether the lot has lost strength.`,
	]
		.filter(Boolean)
		.join(" ");
}
