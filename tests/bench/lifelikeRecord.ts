import type { TextTable, Workbook } from "../../src/core/workbook.ts";
import { type LongRecord, longRecord } from "./longRecord.ts";

const NAMES = ["Amina", "Esi", "Joseph", "Mary O.", "Kofi", "Sister Grace", "Ruth", "Daniel"];
const NOTES = [
	"",
	"",
	"",
	"",
	"delivery room 2",
	"night shift",
	"counted with the supervisor",
	"torn pack",
];

/** A long record whose lines differ as those of people do: minutes, names, quantities, notes. */
export function lifelikeRecord(size: LongRecord): Workbook {
	let seed = 20_270_301;
	const any = (below: number) => {
		seed = (seed * 48_271) % 0x7fffffff;
		return seed % below;
	};
	const one = (of: readonly string[]) => of[any(of.length)] as string;
	const minute = (at: string) => `${at.slice(0, -2)}${String(any(60)).padStart(2, "0")}`;
	const { tables } = longRecord(size);
	const rewritten = (
		file: string,
		header: string,
		row: (cells: readonly string[]) => string[],
	): TextTable => ({
		header: header.split(","),
		rows: tables[file]?.rows.map(row) ?? [],
	});
	return {
		tables: {
			...tables,
			"uses.csv": rewritten("uses.csv", "at,kit,what,by,note", ([at = "", kit = "", what = ""]) => [
				minute(at),
				kit,
				what,
				one(NAMES),
				one(NOTES),
			]),
			"rounds-done.csv": rewritten(
				"rounds-done.csv",
				"date,start,ended,kits,litres,soak_in,soak_out,descaled,done_by,released_by",
				([date = "", start = "", kits = "", litres = "", descaled = ""]) => [
					date,
					start,
					minute(start),
					kits,
					litres,
					minute(start),
					minute(start),
					descaled,
					one(NAMES),
					one(NAMES),
				],
			),
			"checks.csv": rewritten(
				"checks.csv",
				"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,note,checked_by",
				([at = "", ...cells]) => [
					minute(at),
					...cells,
					"yes",
					"yes",
					"yes",
					one(NOTES),
					one(NAMES),
				],
			),
			"journal.csv": rewritten(
				"journal.csv",
				"day,item,lot,entry,quantity,note",
				([day = "", item = "", lot = "", entry = ""]) => [
					day,
					item,
					lot,
					entry,
					String(any(60) + 1),
					one(NAMES),
				],
			),
		},
	};
}
