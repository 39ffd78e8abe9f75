import { typed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { number } from "../values/number.ts";
import { name, note } from "../values/text.ts";
import { optional } from "../values/valueKind.ts";

export const waterSourcesSheet = sheet({
	file: "water-sources.csv",
	title: "Where water comes from",
	about:
		"The unit's sources in the order in which they are used. Without it all water is one source.",
	optional: true,
	unique: ["source"],
	columns: {
		source: typed({ label: "Source", unit: "", value: name(), help: "For example: roof tank." }),
		litres_per_day: typed({
			label: "Gives at most",
			unit: "L/day",
			value: optional(number({ min: 0, max: 1_000_000 })),
			decimals: 0,
			help: "Blank: as much as is wanted.",
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Anything to remember." }),
	},
});
