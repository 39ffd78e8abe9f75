import { checkResult } from "../../../core/kits/checkResult.ts";
import { piecesToCheck } from "../../../core/plan/kits/piecesOfKinds.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { countsAt } from "../../../core/record/countsAt.ts";
import { inTime } from "../../../core/record/kitState.ts";
import { say } from "../../../core/say.ts";
import type { ChecksRow } from "../../../core/sheets/checks.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import type { State } from "../../state/store.ts";

/** One check of a kit as its history shows it. */
export interface ShownCheck {
	readonly line: number;
	/** Undefined where the row could not be read. */
	readonly check: Partial<ChecksRow>;
	readonly result: string;
	readonly reason: string;
}

/**
 * Every check of a kit, the latest first, with what it says of the kit.
 *
 * A check that the plan does not use is shown with the reason, never left out.
 *
 * @param lastDay last day of the plan; later checks are not used
 */
export function kitChecks(
	state: State,
	kit: string,
	kind: string,
	lastDay: IsoDate | undefined,
): ShownCheck[] {
	const { kinds, checks } = readWorkbook(state.workbook).tables;
	const { rows, badRows } = checks;
	const listed = piecesToCheck(kinds)(kind);
	const good = rows
		.filter(({ value }) => value.kit === kit)
		.map((row) => ({ ...row, at: counted(row.value, listed) }))
		.sort((a, b) => inTime(b.at, a.at))
		.map(({ line, value }) => ({ line, check: value, ...said(value, listed, lastDay) }));
	const bad = badRows
		.filter(({ value }) => value.kit === kit)
		.map(({ line, value, problems }) => ({
			line,
			check: value,
			result: "cannot be read",
			reason: problems.map(({ message }) => message).join(" "),
		}));
	return [...good, ...bad];
}

function counted(check: ChecksRow, listed: number | undefined): LocalTime {
	return countsAt(check.checked_at, checkResult(check, listed)?.found === "passed");
}

function said(check: ChecksRow, listed: number | undefined, lastDay: IsoDate | undefined) {
	if (lastDay !== undefined && check.checked_at.date > lastDay)
		return { result: "not used", reason: say`dated after the plan ends` };
	const checked = checkResult(check, listed);
	if (checked) return { result: checked.found, reason: checked.reason };
	const counted = check.pieces_counted;
	if (listed === undefined)
		return { result: "not used", reason: say`a line of its kind's list of pieces cannot be read` };
	if (counted !== null && counted > listed)
		return { result: "not used", reason: say`${counted} pieces counted, ${listed} listed` };
	return { result: "not finished", reason: say`pieces or cleanliness not filled in` };
}
