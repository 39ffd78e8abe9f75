import { errorPct, READING_ERROR, readingMethods } from "../chlorine/readingRange.ts";
import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { sources } from "../sources.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";

const { strip, titration, colour_comparison } = READING_ERROR;

export const strengthReadingsSheet = sheet({
	file: "strength-readings.csv",
	title: say`Strength as measured`,
	about: say`Readings of a lot by test strip or titration, shown beside the computed strength. They flag, and never overrule a discard rule.`,
	optional: true,
	columns: {
		item: typed({
			label: say`Product`,
			unit: "",
			value: name(),
			help: say`As listed under chlorine products.`,
		}),
		lot: typed({
			label: say`Lot`,
			unit: "",
			value: name(),
			help: say`Number on the box or bottle.`,
		}),
		read_on: typed({
			label: say`Read on`,
			unit: "",
			value: date(),
			help: say`Day of the reading.`,
		}),
		strength_pct: typed({
			label: say`Strength read`,
			unit: "%",
			value: number({ min: 0, max: 100, as: "percent" }),
			decimals: 2,
			help: say`Of the product itself: a diluted sample's reading times its dilution.`,
		}),
		method: typed({
			label: say`Method`,
			unit: "",
			value: choice(readingMethods),
			help: say`Strips are ${errorPct(strip.least)} to ${errorPct(strip.most)} % off, colour comparison ${errorPct(colour_comparison.least)} to ${errorPct(colour_comparison.most)} %, titration up to ${errorPct(titration.most)} %.`,
			source: sources.readingErrors,
		}),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`Anything to remember.` }),
	},
});

export type StrengthReadingsRow = RowOf<typeof strengthReadingsSheet>;
