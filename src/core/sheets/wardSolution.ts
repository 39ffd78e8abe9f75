import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { number } from "../values/number.ts";
import { name, note } from "../values/text.ts";

export const wardSolutionSheet = sheet({
	file: "ward-solution.csv",
	title: "Other chlorine solution on the ward",
	about:
		"What else is mixed from the product in use each day, at its own strength. It is ordered together with the rest and kept apart from the kits' figures.",
	optional: true,
	unique: ["use"],
	columns: {
		use: typed({ label: "Used for", unit: "", value: name(), help: "For example: floors." }),
		litres_per_day: typed({
			label: "Litres a day",
			unit: "L/day",
			value: number({ min: 0, max: 10_000 }),
			decimals: 1,
			help: "Mixed once a day.",
		}),
		strength_pct: typed({
			label: "Strength",
			unit: "% available chlorine",
			value: number({ min: 0.001, max: 5 }),
			decimals: 2,
			help: "Wanted for this use.",
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Whose rule it is." }),
	},
});

export type WardSolutionRow = RowOf<typeof wardSolutionSheet>;
