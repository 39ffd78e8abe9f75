import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { clock } from "../values/clock.ts";
import { note } from "../values/note.ts";

export const roundsSheet = sheet({
	file: "rounds.csv",
	title: say`Rounds of reprocessing`,
	about: say`When the rounds of a day start. A round with no kit to reprocess does not run.`,
	unique: ["start"],
	columns: {
		start: typed({
			label: say`Starts at`,
			unit: say`h:min`,
			value: clock(),
			help: say`Clock time.`,
		}),
		label: typed({ label: say`Name`, unit: "", value: note(), help: say`For example: morning.` }),
	},
});

export type RoundsRow = RowOf<typeof roundsSheet>;
