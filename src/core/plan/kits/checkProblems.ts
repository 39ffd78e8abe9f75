import { checkResult } from "../../kits/checkResult.ts";
import { advice, type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type ChecksRow, checksSheet } from "../../sheets/checks.ts";
import type { IsoDate } from "../../values/date.ts";
import { piecesToCheck } from "./piecesOfKinds.ts";

/** What is wrong with the readiness checks: unknown kits, future dates, impossible or missing counts. */
export function checkProblems({ tables }: ReadWorkbook, lastDay: IsoDate): Problem[] {
	const { rows, badRows } = tables.kits;
	const kindOf = new Map([...rows, ...badRows].map(({ value }) => [value.kit, value.kind]));
	const listed = piecesToCheck(tables.kinds);
	return tables.checks.rows.flatMap((row) => {
		if (!kindOf.has(row.value.kit)) return [unknownKit(row)];
		if (row.value.checked_at.date > lastDay) return [inFuture(row, lastDay)];
		const kind = kindOf.get(row.value.kit);
		return kind === undefined ? [] : unfinished(row, listed(kind));
	});
}

const at = (row: GoodRow<ChecksRow>, column: keyof ChecksRow & string) => ({
	file: checksSheet.file,
	line: row.line,
	column,
});

function unknownKit(row: GoodRow<ChecksRow>): Problem {
	return problem(at(row, "kit"), {
		code: "unknown-kit",
		received: row.value.kit,
		allowed: say`a kit in the list of kits`,
		message: say`There is no kit "${row.value.kit}" in the list of kits; its check is kept and not used.`,
	});
}

function inFuture(row: GoodRow<ChecksRow>, lastDay: IsoDate): Problem {
	return problem(at(row, "checked_at"), {
		code: "check-in-future",
		received: row.value.checked_at.date,
		allowed: say`a day up to ${lastDay}, the last day of the plan`,
		message: say`The check of ${row.value.kit} is dated ${row.value.checked_at.date}, after the plan ends; it is kept and not used.`,
	});
}

function unfinished(row: GoodRow<ChecksRow>, listed: number | undefined): Problem[] {
	const counted = row.value.pieces_counted;
	/** One failure is enough: then it takes the kit out, however little was looked at. */
	const isUsed = checkResult(row.value, listed) !== undefined;
	if (counted !== null && listed !== undefined && counted > listed)
		return [
			problem(at(row, "pieces_counted"), {
				code: "too-many-pieces",
				received: String(counted),
				allowed: say`at most ${listed}`,
				message: isUsed
					? say`${counted} pieces were counted for ${row.value.kit} and its kind lists ${listed}; count again or correct the list. That the check failed counts.`
					: say`${counted} pieces were counted for ${row.value.kit} and its kind lists ${listed}; count again or correct the list. The check is not used.`,
			}),
		];
	if (isUsed) return [];
	const missing =
		counted === null ? "pieces_counted" : row.value.clean === null ? "clean" : undefined;
	if (!missing) return [];
	return [
		advice(at(row, missing), {
			code: "check-not-finished",
			received: "",
			allowed: checksSheet.columns[missing].value.allowed,
			message:
				missing === "clean"
					? say`The check of ${row.value.kit} is not finished (clean is blank); the kit stands as before.`
					: say`The check of ${row.value.kit} is not finished (pieces counted is blank); the kit stands as before.`,
		}),
	];
}
