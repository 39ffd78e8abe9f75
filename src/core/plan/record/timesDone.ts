import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { UsageRow } from "../../sheets/usage.ts";
import type { RoundsOverDays } from "./roundsOverDays.ts";

/**
 * How often that was done which a line of what is used up counts by; undefined for loads,
 * which nobody writes down.
 *
 * @param days how many
 */
export function timesDone(
	{ settings }: ReadWorkbook,
	basis: UsageRow["basis"],
	rounds: RoundsOverDays,
	days: number,
): number | undefined {
	return {
		day: days,
		round: rounds.rounds,
		load: undefined,
		kit: rounds.kits,
		piece: rounds.pieces,
		worker_round: rounds.rounds * (valueIn(settings.workers_per_round) ?? 0),
		descale: rounds.descalings,
	}[basis];
}
