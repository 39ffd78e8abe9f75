import { type Checked, checkResult } from "../../kits/checkResult.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { GoodRow } from "../../read/rows.ts";
import { say } from "../../say.ts";
import type { ChecksRow } from "../../sheets/checks.ts";
import type { KitsRow } from "../../sheets/kits.ts";
import { dayNumber, type IsoDate, isoDate } from "../../values/date.ts";
import type { LocalTime } from "../../values/dateTime.ts";
import { piecesByKind } from "./piecesOfKinds.ts";

/** How a kit stands on the first day of the plan. */
export interface KitReadiness {
	readonly kit: GoodRow<KitsRow>;
	readonly state: "ready" | "to reprocess" | "overdue" | "repair" | "incomplete" | "out of service";
	/** Counted among the kits in service: a failed or overdue kit is not, until a later check passes. */
	readonly serves: boolean;
	readonly readySince: IsoDate | null;
	readonly readyUntil: IsoDate | null;
	readonly missing: number;
	readonly reason: string;
	readonly lastCheck: GoodRow<ChecksRow> | undefined;
}

/** A moment as text that sorts in the order of time. */
export function inTimeOrder({ date, minutes }: LocalTime): string {
	return `${date} ${String(minutes).padStart(4, "0")}`;
}

/**
 * How each kit of the register stands on the first day of the plan, by its latest
 * finished check up to the last day. Where the ready life cannot be read, no kit is overdue.
 */
export function readiness(read: ReadWorkbook, firstDay: IsoDate, lastDay: IsoDate): KitReadiness[] {
	const { outcome } = read.settings.ready_life_days;
	const lifeDays = outcome.ok ? outcome.value : Number.POSITIVE_INFINITY;
	const { kits, kinds, checks } = read.tables;
	const listed = piecesByKind(kinds);
	return kits.rows.map((kit) => {
		const finished = checks.rows
			.filter(({ value }) => value.kit === kit.value.kit && value.checked_at.date <= lastDay)
			.flatMap((row) => {
				const checked = checkResult(row.value, listed.get(kit.value.kind) ?? 0);
				return checked ? [{ row, checked }] : [];
			})
			.sort((a, b) =>
				inTimeOrder(a.row.value.checked_at) < inTimeOrder(b.row.value.checked_at) ? -1 : 1,
			);
		return stands(kit, finished.at(-1), firstDay, lifeDays);
	});
}

interface Finished {
	readonly row: GoodRow<ChecksRow>;
	readonly checked: Checked;
}

function stands(
	kit: GoodRow<KitsRow>,
	last: Finished | undefined,
	day: IsoDate,
	lifeDays: number,
): KitReadiness {
	const passed = last?.checked.result === "ready" ? last.row.value.checked_at.date : null;
	// A kit whose register says it is not ready has been used since, whatever an older check said.
	const readySince = kit.value.ready_since === null ? null : later(kit.value.ready_since, passed);
	const readyUntil = readySince === null ? null : plusDays(readySince, lifeDays);
	const base = {
		kit,
		readySince,
		readyUntil,
		missing: last?.checked.missing ?? 0,
		lastCheck: last?.row,
	};
	if (kit.value.status === "out_of_service")
		return { ...base, state: "out of service", serves: false, reason: kit.value.note };
	if (last && last.checked.result !== "ready") {
		const state = last.checked.result === "reprocess" ? "to reprocess" : last.checked.result;
		return {
			...base,
			state,
			serves: false,
			readySince: null,
			readyUntil: null,
			reason: last.checked.reason,
		};
	}
	if (readyUntil === null)
		return {
			...base,
			state: "to reprocess",
			serves: true,
			reason: say`used, or not yet disinfected`,
		};
	if (readyUntil >= day) return { ...base, state: "ready", serves: true, reason: "" };
	// Without any check on record the register's word stands, and the kit goes through the next round.
	return {
		...base,
		state: "overdue",
		serves: last === undefined,
		reason: say`ready only until ${readyUntil}`,
	};
}

function later(a: IsoDate | null, b: IsoDate | null): IsoDate | null {
	if (a === null || b === null) return a ?? b;
	return a > b ? a : b;
}

function plusDays(date: IsoDate, days: number): IsoDate {
	return Number.isFinite(days)
		? isoDate(Math.floor((dayNumber(date) as number) + days))
		: "9999-12-31";
}
