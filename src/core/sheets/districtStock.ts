import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";

/** What the district's own store can give out; not part of a unit's workbook. */
export const districtStockSheet = sheet({
	file: "district-stock.csv",
	title: say`The district's own store`,
	about: say`What the district's store has to give out, counted by hand. It is taken off what all units need together.`,
	optional: true,
	columns: {
		item: typed({
			label: say`Item`,
			unit: "",
			value: name(),
			help: say`By its name in the district, or as a unit writes it.`,
		}),
		quantity: typed({
			label: say`Quantity`,
			unit: say`in the item's measure`,
			value: number({ min: 0, max: 1e12 }),
			help: say`Usable, and not promised to anybody; several lines of one item are added up.`,
		}),
		measure: typed({
			label: say`Measure`,
			unit: "",
			value: note(),
			fallback: "",
			added: true,
			help: say`Unit of the quantity; may be blank where all units count the item in the same.`,
		}),
	},
});

export type DistrictStockRow = RowOf<typeof districtStockSheet>;
