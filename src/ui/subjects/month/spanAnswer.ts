import { betweenByChance } from "../../../core/counts/betweenByChance.ts";
import { SURENESS } from "../../../core/plan/record/calibration.ts";
import type { DayOfMeasure } from "../../../core/plan/record/daysOfMeasure.ts";
import { say } from "../../../core/say.ts";
import { counted } from "../../format/counted.ts";
import { shownPlain } from "../../format/shownNumber.ts";

/** What is drawn day by day. */
export type DailyMeasure = "births" | "kits_used";

/** Whether the births, or the kits used, of some days were as planned; what is not recorded is said, and never 0. */
export function spanAnswer(measure: DailyMeasure, days: readonly DayOfMeasure[]): string {
	const recorded = days.filter(({ done }) => done !== undefined);
	const planned = days.filter(({ expected }) => expected !== undefined);
	const both = planned.filter(({ done }) => done !== undefined);
	const came = (of: readonly DayOfMeasure[]) => sum(of.map(({ done }) => done ?? 0));
	if (recorded.length === 0)
		return measure === "births"
			? say`Nothing is recorded of births on these days.`
			: say`Nothing is recorded of kits used on these days.`;
	const answer =
		both.length > 0
			? answers[measure](both, sum(both.map(({ expected }) => expected ?? 0)), came(both))
			: measure === "births"
				? say`${counted(came(recorded), "birth")} on the days recorded; of none of them a plan was kept.`
				: say`Kits used on the days recorded: ${shownPlain(came(recorded))}; of none of them a plan was kept.`;
	const missing = days.length - recorded.length;
	return missing === 0
		? answer
		: say`${answer} Not recorded: ${missing} of ${days.length} days; they are gaps, and not 0.`;
}

type Answer = (both: readonly DayOfMeasure[], expected: number, came: number) => string;

const answers: Readonly<Record<DailyMeasure, Answer>> = {
	births: (both, expected, came) => {
		const judged = both.filter(({ setAside }) => setAside !== undefined);
		const over = judged.filter(({ done, setAside }) => (done ?? 0) > (setAside ?? 0)).length;
		const sums = say`Births by the plan’s average: ${shownPlain(expected)}; births recorded: ${shownPlain(came)}.`;
		if (judged.length === 0) return sums;
		return over === 0
			? say`What was prepared for was enough for the births on every day planned and recorded (${judged.length}). ${sums}`
			: say`On ${over} of ${judged.length} days planned and recorded more births came than were prepared for. ${sums}`;
	},
	kits_used: (both, expected, came) => {
		const { low, high } = betweenByChance(expected, SURENESS);
		const sums = say`Over the days planned and recorded (${both.length}), kits used by the plan’s average: ${shownPlain(expected)}; recorded: ${shownPlain(came)}; chance alone gives ${low} to ${high}.`;
		if (came > high)
			return say`More kits were used than planned, and chance alone does not explain it. ${sums}`;
		return came < low
			? say`Fewer kits were used than planned, and chance alone does not explain it. ${sums}`
			: say`The kits used fit the plan. ${sums}`;
	},
};

/** A sum of typed figures carries the rounding of adding. */
function sum(values: readonly number[]): number {
	return Number(values.reduce((all, value) => all + value, 0).toFixed(1));
}
