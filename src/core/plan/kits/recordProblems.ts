import { type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { kitMarks } from "../../read/kitMarks.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import { soakMinutes } from "../../record/soakMinutes.ts";
import { say } from "../../say.ts";
import { type KitsRow, kitsSheet } from "../../sheets/kits.ts";
import { type RoundsDoneRow, roundsDoneSheet } from "../../sheets/roundsDone.ts";
import { type UsesRow, usesSheet } from "../../sheets/uses.ts";
import { writeClock } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import { recordInFuture } from "../recordInFuture.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { doubleRounds } from "./doubleRounds.ts";
import type { RoundOfRecord } from "./kitRecord.ts";
import { timelessAdvice } from "./timelessAdvice.ts";
import { usedTwice } from "./usedTwice.ts";

/** What is wrong with the uses and rounds of the record, and with the days since which kits are said to be ready: kits and lots that nobody knows, days to come, times that contradict each other or are not known. */
export function recordProblems(unit: UnitFigures, lastDay: IsoDate): Problem[] {
	const { tables } = unit.read;
	const kits = new Set(kitMarks(tables.kits));
	const isLot = lotsKnown(tables.lots);
	return [
		...tables.kits.rows.flatMap((row) => readyLater(row, lastDay)),
		...tables.uses.rows.flatMap((row) => useProblems(row, kits, lastDay)),
		...unit.roundsDone.flatMap((round) => [
			...roundProblems(round, lastDay),
			...lotProblems(isLot, round.row),
		]),
		...usedTwice(tables),
		...doubleRounds(unit.roundsDone),
		...timelessAdvice(unit, lastDay),
	];
}

/** The register's own word for a day that has not come: a slip in the month or the year. */
function readyLater({ line, value }: GoodRow<KitsRow>, lastDay: IsoDate): Problem[] {
	const { kit, ready_since: since } = value;
	if (since === null || since <= lastDay) return [];
	return [
		problem(
			{ file: kitsSheet.file, line, column: "ready_since" },
			{
				code: "ready-in-future",
				received: since,
				allowed: say`a day that has come, or blank`,
				message: say`Kit ${kit} is said to be ready since ${since}, a day still to come; it does not count. Put the day right, or leave it blank.`,
			},
		),
	];
}

function useProblems(
	row: GoodRow<UsesRow>,
	kits: ReadonlySet<string>,
	lastDay: IsoDate,
): Problem[] {
	const { at, kit, what } = row.value;
	const place = (column: keyof UsesRow & string) => ({
		file: usesSheet.file,
		line: row.line,
		column,
	});
	if (at.date > lastDay) return [recordInFuture(place("at"), at.date, lastDay)];
	if (what === "none_ready" ? kit === "" : kits.has(kit)) return [];
	if (what === "none_ready")
		return [
			problem(place("kit"), {
				code: "kit-where-none-was-ready",
				received: kit,
				allowed: say`a blank cell`,
				message: say`Where no kit was ready no kit is named; "${kit}" was found. Say “used” if it was this kit.`,
			}),
		];
	return [unknownKit(place("kit"), kit)];
}

function roundProblems({ row, unknown }: RoundOfRecord, lastDay: IsoDate): Problem[] {
	const { date, start, soak_in: soakIn, soak_out: soakOut } = row.value;
	const place = (column: keyof RoundsDoneRow & string) => ({
		file: roundsDoneSheet.file,
		line: row.line,
		column,
	});
	const found = unknown.map((mark) => unknownKit(place("kits"), mark));
	if (date > lastDay) found.push(recordInFuture(place("date"), date, lastDay));
	if (soakMinutes(row.value) === null) {
		const [began, ended] = [writeClock(soakIn as number), writeClock(soakOut as number)];
		found.push(
			problem(place("soak_out"), {
				code: "soak-out-before-in",
				received: ended,
				allowed: say`a time after ${began}`,
				message: say`The round of ${date}, ${writeClock(start)}: the soak ended at ${ended}, before it began at ${began}.`,
			}),
		);
	}
	return found;
}

type LotOfProduct = Pick<RoundsDoneRow, "lot" | "product">;

/** Whether a lot is in the store, also by a line of which another cell cannot be read; of any product where none is named. */
function lotsKnown({ rows, badRows }: ReadTables["lots"]): (named: LotOfProduct) => boolean {
	const listed = [...rows, ...badRows];
	const lots = new Set(listed.map(({ value }) => value.lot));
	const ofItems = new Set(listed.map(({ value }) => JSON.stringify([value.item, value.lot])));
	return ({ lot, product }) =>
		product === "" ? lots.has(lot) : ofItems.has(JSON.stringify([product, lot]));
}

function lotProblems(
	isLot: (named: LotOfProduct) => boolean,
	row: GoodRow<RoundsDoneRow>,
): Problem[] {
	const { lot } = row.value;
	if (lot === "" || isLot(row.value)) return [];
	return [
		problem(
			{ file: roundsDoneSheet.file, line: row.line, column: "lot" },
			{
				code: "unknown-lot",
				received: lot,
				allowed: say`a lot in the store`,
				message: say`There is no lot "${lot}" of the product among the lots in the store; the round is kept, and nothing is taken from a lot for it.`,
			},
		),
	];
}

function unknownKit(place: Parameters<typeof problem>[0], mark: string): Problem {
	return problem(place, {
		code: "unknown-kit",
		received: mark,
		allowed: say`a kit in the list of kits`,
		message:
			mark === ""
				? say`No kit is named; the line is kept and counts for none.`
				: say`There is no kit "${mark}" in the list of kits; the line is kept and does not count for it.`,
	});
}
