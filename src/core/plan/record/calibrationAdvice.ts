import { atMost } from "../../atMost.ts";
import { advice, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { pastPlansSheet } from "../../sheets/pastPlans.ts";
import { birthsCalibration } from "./birthsCalibration.ts";
import { ofHundred } from "./calibration.ts";

/** One sentence where the unit's own plans were clearly off: not by chance alone. */
export function calibrationAdvice(read: ReadWorkbook): Problem[] {
	const found = birthsCalibration(read);
	if (!found || found.verdict === "as_asked") return [];
	const { days, enough, asked, between, verdict } = found;
	const percent = atMost(100 * asked, 2);
	const [low, high] = [between.low, between.high].map((end) => atMost(ofHundred(end), 1));
	return [
		advice(
			{ file: pastPlansSheet.file, line: null, column: "set_aside" },
			{
				code: verdict === "too_little" ? "plan-too-little" : "plan-too-much",
				received: say`${enough} of ${days} days`,
				allowed: say`${percent} of 100 days`,
				message:
					verdict === "too_little"
						? say`On ${enough} of ${days} past days the births prepared for were enough (${low} to ${high} of 100), and the plan asks for ${percent} of 100: the plans were too small. See whether births have risen or days are missing from the records, and until then ask for more of 100 under “How sure the plan should be”.`
						: say`On ${enough} of ${days} past days the births prepared for were enough, and one less would have been enough more often than the ${percent} of 100 days that the plan asks for: the plans were larger than they need be. See whether births have fallen or are typed too high.`,
			},
		),
	];
}
