import { memoize } from "../../memoize.ts";
import { problemsOf, valueIn } from "../../outcome.ts";
import type { Problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { type KitState, kitState } from "../../record/kitState.ts";
import { say } from "../../say.ts";
import type { ChecksRow } from "../../sheets/checks.ts";
import type { KitsRow } from "../../sheets/kits.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { lifeOfKind } from "../methods/lifeOfKind.ts";
import { kitRecords, type RoundOfRecord } from "./kitRecord.ts";
import { unreadLines } from "./unreadLines.ts";

/** How a kit stands on the first day of the plan. */
export interface KitReadiness {
	readonly kit: GoodRow<KitsRow>;
	readonly state: KitState["name"];
	/**
	 * Counted among the kits in service: one that is out of service is not, nor one that was
	 * found incomplete or to be repaired, until a later round's check has passed.
	 */
	readonly serves: boolean;
	readonly readySince: IsoDate | null;
	readonly readyUntil: IsoDate | null;
	readonly missing: number;
	/** Why it is not ready, in words; "" where it is. */
	readonly reason: string;
	/** It went through its round and only waits for the check. */
	readonly waitsForCheck: boolean;
	readonly lastCheck: GoodRow<ChecksRow> | undefined;
	/** Whether uses or rounds were written down in the last days that a kit keeps; undefined where those days cannot be read. */
	readonly isRecorded: boolean | undefined;
	/** Why nobody knows whether it is ready or its days are over; empty where the state is known. */
	readonly unknown: readonly Problem[];
}

/** Why a kit is not ready that was used on a baby. */
export const USED = say`used`;
/** Why a kit is not ready that waits for the check after its round. */
export const NOT_TESTED = say`not yet tested after its round`;

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
	const isRecorded = isRecordKept(read, firstDay);
	const lifeOf = memoize((kind: string) => lifeOfKind(read, kind));
	const unreadOf = unreadLines(read.tables);
	const recordOf = kitRecords(read, rounds, lastDay, (kind) => lifeOf(kind).minutesAway);
	return read.tables.kits.rows.map((kit): KitReadiness => {
		const { events, checks, lastCheck } = recordOf(kit.value);
		const life = lifeOf(kit.value.kind).readyLifeDays;
		const byRecord = kitState(events, firstDay, valueIn(life));
		const failed = checks.find(({ event }) => event === byRecord.outBy);
		const isOut = kit.value.status === "out_of_service";
		const state = isOut ? "out_of_service" : byRecord.name;
		return {
			kit,
			state,
			serves: !isOut && failed === undefined,
			readySince: byRecord.readySince ?? null,
			readyUntil: byRecord.readyUntil ?? null,
			missing: lastCheck?.missing ?? 0,
			reason: isOut ? kit.value.note : reasonWords(byRecord, failed?.reason ?? "", isRecorded),
			waitsForCheck: byRecord.reason === "not_tested",
			lastCheck: lastCheck?.row,
			isRecorded,
			unknown:
				state === "ready"
					? [
							...problemsOf(life.outcome),
							...unreadOf(kit.value.kit, byRecord.readySince ?? firstDay),
						]
					: [],
		};
	});
}

/** Whether anything was written down of uses and rounds in the last days that a kit keeps. */
function isRecordKept({ tables, settings }: ReadWorkbook, firstDay: IsoDate): boolean | undefined {
	const days = [
		...tables.uses.rows.map(({ value }) => value.at.date),
		...tables.roundsDone.rows.map(({ value }) => value.date),
	];
	if (days.length === 0) return false;
	const life = valueIn(settings.ready_life_days);
	if (life === undefined) return undefined;
	const since = addDays(firstDay, -Math.floor(life));
	return days.some((day) => day >= since);
}

/**
 * A unit that writes nothing down is not told that its kits were used.
 *
 * @param found by the check that took it out of service
 */
function reasonWords(state: KitState, found: string, isRecorded: boolean | undefined): string {
	const isKept = isRecorded !== false;
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
		case "not_clean":
			return say`not clean`;
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
