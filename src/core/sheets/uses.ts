import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { dateTime } from "../values/dateTime.ts";
import { mark } from "../values/mark.ts";
import { note } from "../values/note.ts";
import { lineId } from "./lineId.ts";

/** What can be written of a kit between two rounds. */
export const useKinds = ["used", "opened", "none_ready"] as const;

export const usesSheet = sheet({
	file: "uses.csv",
	title: say`Kits used`,
	about: say`Each kit that was used on a baby or opened without use, and each time no kit was ready when needed. No name or number of a mother or a baby belongs here.`,
	optional: true,
	columns: {
		at: typed({
			label: say`When`,
			unit: "",
			value: dateTime(),
			help: say`Date and time. Without a time it counts at the end of the day.`,
		}),
		kit: typed({
			label: say`Kit`,
			unit: "",
			value: mark(),
			help: say`The mark on the kit; blank where none was ready.`,
		}),
		what: typed({
			label: say`What happened`,
			unit: "",
			value: choice(useKinds),
			help: say`used: on a baby; opened: unpacked and not used; no kit ready: a kit was needed and there was none.`,
		}),
		by: typed({
			label: say`Written by`,
			unit: "",
			value: note(),
			help: say`Who writes this; may be blank.`,
		}),
		note: typed({
			label: say`Note`,
			unit: "",
			value: note(),
			help: say`Never the name or number of a mother or a baby.`,
			added: true,
		}),
		id: lineId(),
	},
});

export type UsesRow = RowOf<typeof usesSheet>;
