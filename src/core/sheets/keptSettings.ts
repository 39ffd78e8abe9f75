import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { mark } from "../values/mark.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";

export const keptSettingsSheet = sheet({
	file: "kept-settings.csv",
	title: say`Kept copies of the settings`,
	about: say`Copies of the settings and rounds, each under its name, to compare and to take back. What a copy does not name stays as it is in the workbook.`,
	optional: true,
	alike: ["name", "of", "key"],
	columns: {
		name: typed({ label: say`Copy`, unit: "", value: name(), help: say`Name of the copy.` }),
		of: typed({
			label: say`Of`,
			unit: "",
			value: choice(["setting", "round"]),
			help: say`setting: a setting of the unit; round: one of the rounds of a day.`,
		}),
		key: typed({
			label: say`Setting or start`,
			unit: "",
			value: mark(),
			help: say`Name of the setting in the file of settings, or the time at which the round starts.`,
		}),
		value: typed({
			label: say`Value or name`,
			unit: "",
			value: note(),
			help: say`Value of the setting (blank: its default), or name of the round.`,
		}),
	},
});

export type KeptSettingsRow = RowOf<typeof keptSettingsSheet>;
