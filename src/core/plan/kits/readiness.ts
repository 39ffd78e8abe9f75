import { memoize } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { type KitState, kitState } from "../../record/kitState.ts";
import { say } from "../../say.ts";
import type { ChecksRow } from "../../sheets/checks.ts";
import type { KitsRow } from "../../sheets/kits.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { lifeOfKind } from "../methods/lifeOfKind.ts";
import { kitRecords, type RoundOfRecord } from "./kitRecord.ts";

/** How a kit stands on the first day of the plan. */
export interface KitReadiness {
	readonly kit: GoodRow<KitsRow>;
	readonly state: KitState["name"];
	/** Counted among the kits in service: one that is incomplete, in repair or out of service is not. */
	readonly serves: boolean;
	readonly readySince: IsoDate | null;
	readonly readyUntil: IsoDate | null;
	readonly missing: number;
	/** Why it is not ready, in words; "" where it is. */
	readonly reason: string;
	readonly lastCheck: GoodRow<ChecksRow> | undefined;
	/** Whether uses or rounds were written down in the last days that a kit keeps. */
	readonly isRecorded: boolean;
}

/** Why a kit is not ready that was used on a baby. */
export const USED = say`used`;
/** Why a kit is not ready that waits for the check after its round. */
export const NOT_TESTED = say`not yet tested after its round`;

/** Life of a kit where the setting cannot be read: no kit is taken for out of date. */
const NO_END_DAYS = 100_000;

/**
 * How each kit of the register stands on the first day of the plan, by everything that the
 * record says up to the last day.
 */
export function readiness(
	read: ReadWorkbook,
	rounds: readonly RoundOfRecord[],
	firstDay: IsoDate,
	lastDay: IsoDate,
): KitReadiness[] {
	const lifeDays = valueIn(read.settings.ready_life_days) ?? NO_END_DAYS;
	const isKept = isRecordKept(read, firstDay, lifeDays);
	const lifeOf = memoize((kind: string) => lifeOfKind(read, kind));
	const recordOf = kitRecords(read, rounds, lastDay, (kind) => lifeOf(kind).minutesAway ?? 0);
	return read.tables.kits.rows.map((kit): KitReadiness => {
		const { events, lastCheck } = recordOf(kit.value);
		const keepsDays = valueIn(lifeOf(kit.value.kind).readyLifeDays) ?? NO_END_DAYS;
		const byRecord = kitState(events, firstDay, keepsDays);
		const isOut = kit.value.status === "out_of_service";
		const state = isOut ? "out_of_service" : byRecord.name;
		return {
			kit,
			state,
			serves: state === "ready" || state === "to_reprocess",
			readySince: byRecord.readySince ?? null,
			readyUntil: byRecord.readyUntil ?? null,
			missing: lastCheck?.missing ?? 0,
			reason: isOut ? kit.value.note : reasonWords(byRecord, lastCheck?.reason ?? "", isKept),
			lastCheck: lastCheck?.row,
			isRecorded: isKept,
		};
	});
}

/** Whether anything was written down of uses and rounds in the last days that a kit keeps. */
function isRecordKept({ tables }: ReadWorkbook, firstDay: IsoDate, lifeDays: number): boolean {
	const since = addDays(firstDay, -Math.floor(Math.min(lifeDays, NO_END_DAYS)));
	return (
		tables.uses.rows.some(({ value }) => value.at.date >= since) ||
		tables.roundsDone.rows.some(({ value }) => value.date >= since)
	);
}

/** A unit that writes nothing down is not told that its kits were used. */
function reasonWords(state: KitState, found: string, isKept: boolean): string {
	const { readyUntil } = state;
	switch (state.reason) {
		case undefined:
			return "";
		case "used":
			return USED;
		case "opened":
			return say`opened`;
		case "not_tested":
			return NOT_TESTED;
		case "life_over":
			return isKept
				? say`ready only until ${readyUntil}`
				: say`ready only until ${readyUntil}; what happened since is not recorded`;
		case "nothing_known":
			return isKept
				? say`used, or not yet disinfected`
				: say`not recorded: used, or not yet disinfected`;
		default:
			return found;
	}
}
