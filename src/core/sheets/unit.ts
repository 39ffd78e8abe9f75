import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";

/** The unit's settings, one a row; their meaning and limits are in settings.ts. */
export const unitSheet = sheet({
	file: "unit.csv",
	title: say`Settings of the unit`,
	about: say`How this unit works: one setting a row. A blank value means the default.`,
	unique: ["key"],
	columns: {
		key: typed({ label: say`Setting`, unit: "", value: name(), help: say`Name of the setting.` }),
		value: typed({
			label: say`Value`,
			unit: "",
			value: note(),
			help: say`What holds in this unit.`,
		}),
	},
});

export type SettingRow = RowOf<typeof unitSheet>;
