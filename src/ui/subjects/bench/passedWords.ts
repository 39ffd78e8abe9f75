import { kitsOn } from "../../../core/plan/today/kitsOn.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { wordIn } from "../../state/numberIn.ts";

/** What a check that every test passed came to: without a round before it the kit is no readier for it. */
export function passedWords(workbook: Workbook, kit: string, day: IsoDate): string {
	const row = kitsOn(readWorkbook(workbook), day).find((one) => wordIn(one.kit) === kit);
	return wordIn(row?.state) === "ready"
		? say`Kit ${kit} passed every test.`
		: say`Kit ${kit} passed every test, and is not ready: it goes through a round first, and the check after it.`;
}
