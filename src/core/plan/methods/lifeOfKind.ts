import type { Figure } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { MINUTES_PER_HOUR } from "../../values/clock.ts";
import { isSentAway, readyLifeDaysOf } from "./readyLifeDaysOf.ts";
import { treatedKits } from "./treatedKits.ts";

/** How the kits of one kind in the register come back from a round, and how long they then keep. */
export interface LifeOfKind {
	readonly readyLifeDays: Figure;
	/** From a round's start until an autoclave gives them back, 0 where none has them; undefined where its hours cannot be read. */
	readonly minutesAway: number | undefined;
}

export function lifeOfKind(read: ReadWorkbook, kind: string): LifeOfKind {
	const treated = valueIn(treatedKits(read, kind));
	const hours = valueIn(read.settings.autoclave_turnaround_hours);
	return {
		readyLifeDays: readyLifeDaysOf(read.settings, treated),
		minutesAway: treated && isSentAway(treated) ? hours && hours * MINUTES_PER_HOUR : 0,
	};
}
