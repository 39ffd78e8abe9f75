import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { name } from "../values/name.ts";

/** One table for a whole district; not part of a unit's workbook. */
export const districtNamesSheet = sheet({
	file: "names.csv",
	title: say`Names of items in the district`,
	about: say`Which of the units' items are the same. Only what stands here is taken together; every other item keeps the name its unit gave it.`,
	optional: true,
	unique: ["item"],
	columns: {
		item: typed({
			label: say`Item`,
			unit: "",
			value: name(),
			help: say`As a unit writes it, letter by letter.`,
		}),
		name: typed({
			label: say`Name in the district`,
			unit: "",
			value: name(),
			help: say`Under which it is added up.`,
		}),
	},
});

export type DistrictNamesRow = RowOf<typeof districtNamesSheet>;
