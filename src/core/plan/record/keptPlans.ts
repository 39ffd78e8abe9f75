import { memoizeByObject } from "../../memoize.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import type { PastPlansRow } from "../../sheets/pastPlans.ts";
import type { Measure } from "../../sheets/planMeasures.ts";
import type { IsoDate } from "../../values/date.ts";

type Row = GoodRow<PastPlansRow>;

/** What was planned for days past, by measure and day. */
export const keptPlans = memoizeByObject(
	({ pastPlans }: ReadTables): ((measure: Measure) => ReadonlyMap<IsoDate, Row>) => {
		const byMeasure = new Map<Measure, Map<IsoDate, Row>>();
		for (const row of pastPlans.rows) {
			const { measure_of: measure, date } = row.value;
			const days = byMeasure.get(measure) ?? new Map<IsoDate, Row>();
			byMeasure.set(measure, days.set(date, row));
		}
		return (measure) => byMeasure.get(measure) ?? new Map();
	},
);
