import { shareBetween } from "../../../core/counts/shareBetween.ts";
import { SURENESS } from "../../../core/plan/record/calibration.ts";
import {
	type FailuresOverDays,
	failuresOverDays,
} from "../../../core/plan/record/failuresOverDays.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";
import type { MonthPicture } from "./monthPicture.ts";

/** How many checks failed, by what, and of which kits. */
export function failedAnswer({ checks, failed, byFinding, byKit }: FailuresOverDays): string {
	if (checks === 0) return say`Nothing is recorded of readiness checks on these days.`;
	if (failed.length === 0) return say`Every readiness check on these days was passed: ${checks}.`;
	const { low, high } = shareBetween(failed.length, checks, SURENESS);
	const found = say`Readiness checks that failed: ${failed.length} of ${checks}; in the long run between ${shownNumber(100 * low, 0)} and ${shownNumber(100 * high, 0)} of 100.`;
	const [what] = byFinding;
	const [kit] = byKit;
	return [
		found,
		what && what.times > 1 && say`Most often found: ${what.name} (${what.times} times).`,
		kit && kit.times > 1 && say`Most often of kit ${kit.name} (${kit.times} times).`,
	]
		.filter(Boolean)
		.join(" ");
}

/** Kits that failed a readiness check, by what was found and by kit. */
export function failedOfDays({ tables }: ReadWorkbook, days: readonly IsoDate[]): MonthPicture {
	const title = say`Checks that failed, by test and by kit`;
	const failures = failuresOverDays(tables, days);
	const words = failedAnswer(failures);
	if (failures.failed.length === 0) return { title, words };
	return {
		title,
		words,
		reading: say`Each row is what was found, each column a kit; the number in the ring is how often.`,
		draw: ({ failedPicture }, width) => failedPicture(failures, width),
		table: {
			name: say`The numbers, by test and by kit`,
			of: () =>
				paperTable(
					title,
					[
						{ label: say`What was found` },
						{ label: say`Kit` },
						{ label: say`Times`, numeric: true },
					],
					[
						{
							rows: failures.byFinding.flatMap(({ name }) =>
								failures.byKit.flatMap(({ name: kit }) => {
									const times = failures.failed.filter(
										(each) => each.kit === kit && each.finding === name,
									).length;
									return times === 0 ? [] : [[name, kit, String(times)]];
								}),
							),
						},
					],
				),
		},
	};
}
