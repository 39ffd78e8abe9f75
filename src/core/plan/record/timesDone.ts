import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { UsageRow } from "../../sheets/usage.ts";
import type { RoundsOverDays } from "./roundsOverDays.ts";

/**
 * How often that was done which a line of what is used up counts by; undefined where that is
 * not known: loads, which nobody writes down, pieces of kits without a list, people in a round
 * that nobody can read.
 *
 * @param days how many
 */
export function timesDone(
	{ settings }: ReadWorkbook,
	basis: UsageRow["basis"],
	rounds: RoundsOverDays,
	days: number,
): number | undefined {
	const people = valueIn(settings.workers_per_round);
	return {
		day: days,
		round: rounds.rounds,
		load: undefined,
		kit: rounds.kits,
		piece: rounds.pieces,
		worker_round: people === undefined ? undefined : rounds.rounds * people,
		descale: rounds.descalings,
	}[basis];
}
