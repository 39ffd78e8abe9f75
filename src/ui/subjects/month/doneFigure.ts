import { comparedDays } from "../../../core/plan/record/comparedDays.ts";
import { measuresDone } from "../../../core/plan/record/measuresDone.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { pictureFigure, pictureWidth } from "../../dom/pictureFigure.ts";

/** The births of the days planned and recorded beside their plan; undefined where there is no such day. */
export function doneFigure(
	read: ReadWorkbook,
	days: readonly IsoDate[],
	room: number,
): HTMLElement | undefined {
	const { byDay } = measuresDone(read, days).births;
	const compared = comparedDays(read.tables, "births", days, byDay);
	if (compared.length === 0) return undefined;
	const over = compared.filter(({ done, setAside }) => done > (setAside ?? Infinity)).length;
	return pictureFigure(
		({ donePicture }) => donePicture(compared, pictureWidth(room)),
		say`Births of each day beside what was planned`,
		say`Dots are the births of each day, the band is what was prepared for, the bar in it the average. Days on which births went over the band: ${over} of ${compared.length}.`,
	);
}
