import type { DistrictNamesRow } from "../../core/sheets/districtNames.ts";
import type { IsoDate } from "../../core/values/date.ts";
import type { Headers } from "../../io/district/unitPiles.ts";
import type { Answers } from "../../io/fileQuestion.ts";

/** What every worker is told once. */
export interface District {
	readonly folder: string;
	/** The table of names. */
	readonly names: readonly DistrictNamesRow[];
	readonly answers: Answers;
	readonly today: IsoDate | undefined;
}

/** Units to plan. */
export interface UnitsTask {
	/** Of workbooks their paths from the district's folder, of a pile the names of its units. */
	readonly paths: readonly string[];
	readonly pile?: { readonly path: string; readonly headers: Headers };
}
