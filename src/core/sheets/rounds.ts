import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { clock } from "../values/clock.ts";
import { note } from "../values/text.ts";

export const roundsSheet = sheet({
	file: "rounds.csv",
	title: "Rounds of reprocessing",
	about: "When the rounds of a day start. A round with no kit to reprocess does not run.",
	unique: ["start"],
	columns: {
		start: typed({ label: "Starts at", unit: "h:min", value: clock(), help: "Clock time." }),
		label: typed({ label: "Name", unit: "", value: note(), help: "For example: morning." }),
	},
});

export type RoundsRow = RowOf<typeof roundsSheet>;
