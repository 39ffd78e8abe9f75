import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import { pictureWidth } from "../../dom/pictureFigure.ts";
import { dailyPicture } from "./dailyPicture.ts";
import { failedOfDays } from "./failedAnswer.ts";
import { itemsOfDays } from "./itemsAnswer.ts";
import { monthPictureFigure } from "./monthPicture.ts";
import { needsOfDays } from "./needsAnswer.ts";

/** Some days in pictures, each with its answer in a sentence. */
export function monthPictures(
	read: ReadWorkbook,
	days: readonly IsoDate[],
	room: number,
	onPaper = false,
): HTMLElement {
	const all = [
		dailyPicture(read, "births", days),
		dailyPicture(read, "kits_used", days),
		needsOfDays(read, days),
		itemsOfDays(read, days),
		failedOfDays(read, days),
	];
	return el(
		"section",
		{ class: "month-pictures", "aria-label": say`Planned and done, in pictures` },
		...all.map((picture) => monthPictureFigure(picture, pictureWidth(room), onPaper)),
	);
}
