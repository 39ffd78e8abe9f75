import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";

export const wardSolutionSheet = sheet({
	file: "ward-solution.csv",
	title: say`Other chlorine solution on the ward`,
	about: say`What else is mixed from the product in use each day, at its own strength. It is ordered together with the rest and kept apart from the kits' figures.`,
	optional: true,
	unique: ["use"],
	columns: {
		use: typed({ label: say`Used for`, unit: "", value: name(), help: say`For example: floors.` }),
		litres_per_day: typed({
			label: say`Litres a day`,
			unit: say`L/day`,
			value: number({ min: 0, max: 10_000 }),
			decimals: 1,
			help: say`Mixed once a day.`,
		}),
		strength_pct: typed({
			label: say`Strength`,
			unit: say`% available chlorine`,
			value: number({ min: 0.001, max: 5, as: "percent" }),
			decimals: 2,
			help: say`Wanted for this use.`,
		}),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`Whose rule it is.` }),
	},
});

export type WardSolutionRow = RowOf<typeof wardSolutionSheet>;
