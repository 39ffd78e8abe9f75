import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";
import { type Calibration, calibration } from "./calibration.ts";
import { comparedDays } from "./comparedDays.ts";
import { keptPlans } from "./keptPlans.ts";

/**
 * On how many of the past days the births set aside were enough, beside the confidence that
 * the plan asks for. Births are what all else of the plan hangs on, and the one measure of
 * which a day without any is written down too.
 *
 * @returns undefined without a past day that was planned and recorded, or without a confidence
 */
export function birthsCalibration({
	tables,
	settings,
}: ReadWorkbook): (Calibration & { readonly asked: number }) | undefined {
	const asked = valueIn(settings.plan_confidence);
	if (asked === undefined) return undefined;
	const births = new Map<IsoDate, number>();
	for (const { value } of tables.records.rows)
		if (value.births !== null) births.set(value.date, value.births);
	const days = [...keptPlans(tables)("births").keys()];
	const found = calibration(comparedDays(tables, "births", days, births), asked, 1);
	return found && { ...found, asked };
}
