import { say } from "../../../core/say.ts";
import { capital } from "../../format/capital.ts";
import { shownDay, shownMonth } from "../../format/shownDay.ts";
import { DASH } from "../../format/shownFigure.ts";
import { twoDigits } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";
import type { SpanPoint } from "./spanPoint.ts";

/** The numbers behind a picture of days or months. */
export function pointsTable(
	name: string,
	points: readonly SpanPoint[],
	band: string,
	byMonth: boolean,
): HTMLTableElement {
	const of = (value: number | undefined) => (value === undefined ? DASH : twoDigits(value));
	return paperTable(
		name,
		[
			{ label: byMonth ? say`Month` : say`Day` },
			...(byMonth ? [{ label: say`Days recorded`, numeric: true }] : []),
			{ label: say`Recorded`, numeric: true },
			{ label: say`Average`, numeric: true },
			{ label: capital(band), numeric: true },
		],
		[
			{
				rows: points.map((point) => [
					byMonth ? `${shownMonth(point.from)} ${point.from.slice(0, 4)}` : shownDay(point.from),
					...(byMonth ? [String(point.recorded)] : []),
					point.done === undefined ? say`not recorded` : twoDigits(point.done),
					of(point.expected),
					point.low ? say`${twoDigits(point.low)} to ${of(point.high)}` : of(point.high),
				]),
			},
		],
	);
}
