import { type ReadWorkbook, readWorkbook } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { lastRecordedDay } from "./dayToShow.ts";

/**
 * A workbook as it reads on a day. A clock that is behind the record is wrong, or the
 * workbook an example: it then reads as if no clock had been asked.
 *
 * @param clock the day by the computer's clock; undefined where none is asked
 */
export function readToday(workbook: Workbook, clock: IsoDate | undefined): ReadWorkbook {
	const read = readWorkbook(workbook);
	const isKnown = clock !== undefined && lastRecordedDay(read.tables) <= clock;
	return isKnown ? { ...read, today: clock } : read;
}
