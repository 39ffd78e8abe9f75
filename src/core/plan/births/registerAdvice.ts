import { chanceAtMost } from "../../counts/counts.ts";
import { poisson } from "../../counts/poisson.ts";
import { fixed } from "../../fixed.ts";
import type { DailyCounts } from "../../forecast/dailyCounts.ts";
import { FEWEST_BIRTHS, FEWEST_DAYS, type Forecast } from "../../forecast/forecast.ts";
import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { recordsSheet } from "../../sheets/records.ts";
import { unitSheet } from "../../sheets/unit.ts";
import { addDays, daysFrom, type IsoDate } from "../../values/date.ts";
import { levelChange } from "./levelChange.ts";
import type { RegisterFigures } from "./registerFigures.ts";

/** What the reader should know about the register. */
export function registerAdvice(
	read: ReadWorkbook,
	figures: RegisterFigures,
	firstDay: IsoDate,
): Problem[] {
	const { register, forecast } = figures;
	const wanted = valueIn(read.settings.births_from_register) === "yes";
	const days = register && valueIn(register);
	const learned = forecast && valueIn(forecast);
	return [
		...(wanted && forecast && !forecast.outcome.ok && read.settings.register_from.outcome.ok
			? forecast.outcome.problems.map((problem): Problem => ({ ...problem, weight: "advice" }))
			: []),
		...fromFirstDayOn(read, firstDay),
		...moreKitsThanBirths(read),
		...(days ? [...ended(days, firstDay), ...longGaps(days), ...oddDays(days)] : []),
		...(wanted && learned?.ledBy === "settings" ? [young(learned)] : []),
		...shifted(figures),
		...nothingLeft(read, figures.register),
	];
}

function young({ recordedDays }: Forecast): Problem {
	return advice(at(null, "births"), {
		code: "short-register",
		received: say`${recordedDays} recorded days`,
		allowed: say`at least ${FEWEST_DAYS} days and ${FEWEST_BIRTHS} births`,
		message: say`The register is still short. Until it has ${FEWEST_DAYS} recorded days and ${FEWEST_BIRTHS} births, births a day from the settings lead, and the register moves them.`,
	});
}

const at = (line: number | null, column: string) => ({ file: recordsSheet.file, line, column });

function fromFirstDayOn({ tables }: ReadWorkbook, firstDay: IsoDate): Problem[] {
	const late = tables.records.rows.filter(({ value }) => value.date >= firstDay);
	const [first] = late;
	if (!first) return [];
	return [
		advice(at(first.line, "date"), {
			code: "record-after-start",
			received: first.value.date,
			allowed: say`days before ${firstDay}, the first day of the plan`,
			message: say`${late.length} recorded days lie on or after the first day of the plan; they are kept and not used.`,
		}),
	];
}

function moreKitsThanBirths({ tables }: ReadWorkbook): Problem[] {
	return tables.records.rows
		.filter(({ value }) => value.births !== null && (value.kits_used ?? 0) > value.births)
		.map(({ line, value }) =>
			advice(at(line, "kits_used"), {
				code: "more-kits-than-births",
				received: String(value.kits_used),
				allowed: say`at most ${value.births}, the births of that day`,
				message: say`On ${value.date} more kits were used than babies born (${value.kits_used} and ${value.births}); look at the register again.`,
			}),
		);
}

const LONG_GAP_DAYS = 14;

function ended({ firstDay, counts }: DailyCounts, planStart: IsoDate): Problem[] {
	const next = addDays(firstDay, counts.length);
	const missing = daysFrom(next, planStart);
	if (missing < LONG_GAP_DAYS) return [];
	return [
		advice(at(null, "date"), {
			code: "register-ended",
			received: say`${missing} days`,
			allowed: say`records up to the day before the plan`,
			message: say`The register ends ${missing} days before the plan; the longer ago, the less sure the forecast. Enter the days since, or your own figures.`,
		}),
	];
}

function longGaps({ firstDay, counts }: DailyCounts): Problem[] {
	const found: Problem[] = [];
	let missing = 0;
	counts.forEach((count, day) => {
		if (count === null) {
			missing++;
			return;
		}
		if (missing >= LONG_GAP_DAYS)
			found.push(
				advice(at(null, "date"), {
					code: "long-gap",
					received: say`${missing} days`,
					allowed: "",
					message: say`${missing} days before ${addDays(firstDay, day)} are not recorded; they are taken as missing, not as zero.`,
				}),
			);
		missing = 0;
	});
	return found;
}

/** A day that would come once in a million is more likely a slip. */
const ONCE_IN_A_MILLION = 1e-6;

function oddDays({ firstDay, counts }: DailyCounts): Problem[] {
	const recorded = counts.filter((count) => count !== null);
	const middle = [...recorded].sort((a, b) => a - b)[recorded.length >> 1] as number;
	// The middle day stands for all, because one huge day must not hide itself in the mean; spread is allowed for.
	const usual = poisson(Math.max(1, middle * 1.5));
	return counts.flatMap((count, day) => {
		if (count === null || 1 - chanceAtMost(usual, count - 1) > ONCE_IN_A_MILLION) return [];
		const date = addDays(firstDay, day);
		return [
			advice(at(null, "births"), {
				code: "odd-day",
				received: String(count),
				allowed: say`days like the others, around ${middle}`,
				message: say`${count} births on ${date} are far from the usual ${middle}; look at the register again. The day is used as it stands.`,
			}),
		];
	});
}

/** A lasting change of level, with what was recorded before and after, so that a cause can be looked for; the way out stands last. */
function shifted(figures: RegisterFigures): Problem[] {
	const change = levelChange(figures);
	if (!change) return [];
	const { since } = change;
	const [was, now] = [fixed(change.before, 1), fixed(change.after, 1)];
	const words =
		change.after > change.before
			? say`Births have risen from ${was} to ${now} a day since about ${since}, and the forecast follows. Look for the cause; chance alone looks like this in about one unit in six a year.`
			: say`Births have fallen from ${was} to ${now} a day since about ${since}, and the forecast follows. Look for the cause; chance alone looks like this in about one unit in six a year.`;
	return [
		advice(at(null, "births"), {
			code: "level-shift",
			received: say`${now} a day since ${since}`,
			allowed: say`${was} a day before`,
			message: `${words} ${say`Only once you know it and it lasts can the forecast be made to learn from that day on, on the page of births to come.`}`,
		}),
	];
}

/** A day from which births are learned, after which none is recorded. */
function nothingLeft({ settings, tables }: ReadWorkbook, register: unknown): Problem[] {
	const from = valueIn(settings.register_from);
	if (!from || register || tables.records.rows.length === 0) return [];
	return [
		advice(
			{ file: unitSheet.file, line: null, column: "register_from" },
			{
				code: "nothing-recorded-since",
				received: from,
				allowed: say`a day on or before the last recorded one`,
				message: say`Births are to be learned from ${from} on, and none is recorded from that day up to the plan; births a day from the settings are used.`,
			},
		),
	];
}
