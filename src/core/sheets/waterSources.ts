import { typed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const waterSourcesSheet = sheet({
	file: "water-sources.csv",
	title: say`Where water comes from`,
	about: say`The unit's sources in the order in which they are used. Without it all water is one source.`,
	optional: true,
	unique: ["source"],
	columns: {
		source: typed({
			label: say`Source`,
			unit: "",
			value: name(),
			help: say`For example: roof tank.`,
		}),
		litres_per_day: typed({
			label: say`Gives at most`,
			unit: say`L/day`,
			value: optional(number({ min: 0, max: 1_000_000 })),
			decimals: 0,
			help: say`Blank: as much as is wanted.`,
		}),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`Anything to remember.` }),
	},
});
