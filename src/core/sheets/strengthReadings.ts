import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { sources } from "../sources.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { name, note } from "../values/text.ts";

export const strengthReadingsSheet = sheet({
	file: "strength-readings.csv",
	title: "Strength as measured",
	about:
		"Readings of a lot by test strip or titration, shown beside the computed strength. They flag, and never overrule a discard rule.",
	optional: true,
	columns: {
		item: typed({
			label: "Product",
			unit: "",
			value: name(),
			help: "As listed under chlorine products.",
		}),
		lot: typed({ label: "Lot", unit: "", value: name(), help: "Number on the box or bottle." }),
		read_on: typed({ label: "Read on", unit: "", value: date(), help: "Day of the reading." }),
		strength_pct: typed({
			label: "Strength read",
			unit: "%",
			value: number({ min: 0, max: 100 }),
			decimals: 2,
			help: "Of the product itself: a diluted sample's reading times its dilution.",
		}),
		method: typed({
			label: "Method",
			unit: "",
			value: choice(["strip", "titration", "colour_comparison"]),
			help: "Strips are 5 to 48 % off, colour comparison 2 to 19 %, titration up to 12 %.",
			source: sources.readingErrors,
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Anything to remember." }),
	},
});

export type StrengthReadingsRow = RowOf<typeof strengthReadingsSheet>;
