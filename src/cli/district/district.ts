import type { DistrictNamesRow } from "../../core/sheets/districtNames.ts";
import type { IsoDate } from "../../core/values/date.ts";
import type { Answers } from "../../io/fileQuestion.ts";

/** What every worker is told once. */
export interface District {
	readonly folder: string;
	/** The table of names. */
	readonly names: readonly DistrictNamesRow[];
	readonly answers: Answers;
	readonly today: IsoDate | undefined;
}

/** Workbooks to plan, as paths from the district's folder. */
export interface UnitsTask {
	readonly paths: readonly string[];
}
