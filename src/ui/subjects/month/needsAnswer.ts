import { type NeedsShare, needsShare } from "../../../core/plan/record/needsShare.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { addDays, type IsoDate } from "../../../core/values/date.ts";
import { shownPlain, twoDigits } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";
import type { MonthPicture } from "./monthPicture.ts";
import type { NeedsPoint } from "./needsPicture.ts";

/** A share as needs in 1,000. */
export function inThousand(share: number): number {
	return 1000 * share;
}

/** Whether more needs found no kit ready than the plan accepts. */
export function needsAnswer(share: NeedsShare | undefined): string {
	if (!share)
		return say`Nothing is recorded of uses on these days, so it is not known whether a kit was ready whenever one was needed.`;
	const { unmet, needs, between, accepted, verdict } = share;
	if (!between) return say`No kit was needed on the days on which uses were written down.`;
	const found =
		unmet === 0
			? say`A kit was ready every time one was needed (${shownPlain(needs)}), on the days on which uses were written down`
			: say`Times no kit was ready when needed: ${unmet} of ${shownPlain(needs)}, on the days on which uses were written down`;
	const [low, high] = [between.low, between.high].map((end) => toldEnd(end, accepted));
	const range = say`${found}: in the long run between ${low} and ${high} in 1\u202f000.`;
	if (accepted === undefined) return range;
	const plan = say`The plan accepts ${twoDigits(inThousand(accepted))} in 1\u202f000.`;
	return {
		more: say`${range} ${plan} That is more than it accepts, beyond chance.`,
		fewer: say`${range} ${plan} That is fewer than it accepts, beyond chance.`,
		cannot_tell: say`${range} ${plan} So few times cannot tell yet whether that holds.`,
	}[verdict];
}

/** An end of the interval in two digits, or in more where two would put it on the other side of what is accepted. */
function toldEnd(end: number, accepted = 0): string {
	const [value, limit] = [inThousand(end), inThousand(accepted)];
	const short = Number(value.toPrecision(2));
	return Math.sign(short - limit) === Math.sign(value - limit)
		? shownPlain(short)
		: shownPlain(value);
}

/** Needs that found none ready on these days, and on all days on record up to them, beside what the plan accepts. */
export function needsOfDays(read: ReadWorkbook, days: readonly IsoDate[]): MonthPicture {
	const title = say`Times no kit was ready when needed`;
	const share = needsShare(read, days);
	const words = needsAnswer(share);
	if (!share?.between) return { title, words };
	const all = needsShare(read, daysOnRecord(read, days));
	const rows = [
		{ name: say`these days`, share },
		...(all && all.needs > share.needs ? [{ name: say`all days up to them`, share: all }] : []),
	];
	const points = rows.flatMap(({ name, share: { unmet, needs, between } }): NeedsPoint[] =>
		between
			? [
					{
						name,
						found: inThousand(unmet / needs),
						low: inThousand(between.low),
						high: inThousand(between.high),
					},
				]
			: [],
	);
	const accepted = share.accepted === undefined ? undefined : inThousand(share.accepted);
	return {
		title,
		words,
		reading: say`The dot is what was written down, the band where the truth lies 95 times of 100 (exact binomial interval), the dashed line what the plan accepts. Each step along the foot is ten times the one before.`,
		draw: ({ needsPicture }, width) => needsPicture(points, accepted, width),
		table: {
			name: say`The numbers`,
			of: () =>
				paperTable(
					title,
					[
						{ label: say`Days` },
						{ label: say`Days with uses written down`, numeric: true },
						{ label: say`Times a kit was needed`, numeric: true },
						{ label: say`No kit was ready`, numeric: true },
						{ label: say`In 1\u202f000, between`, numeric: true },
					],
					[
						{
							rows: rows.map(({ name, share: { days: kept, needs, unmet } }, at) => [
								name,
								String(kept),
								shownPlain(needs),
								String(unmet),
								say`${twoDigits(points[at]?.low ?? 0)} and ${twoDigits(points[at]?.high ?? 0)}`,
							]),
						},
					],
				),
		},
	};
}

/** From the first use on record to the last of some days. */
function daysOnRecord({ tables }: ReadWorkbook, days: readonly IsoDate[]): IsoDate[] {
	const last = days.at(-1) ?? "";
	const [first = ""] = [...tables.uses.rows.map(({ value }) => value.at.date), ...days].sort();
	const all: IsoDate[] = [];
	for (let day = first; day <= last && day !== ""; day = addDays(day, 1)) all.push(day);
	return all;
}
