import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { optional } from "../values/valueKind.ts";

export const kitsSheet = sheet({
	file: "kits.csv",
	title: say`Kits of the unit`,
	about: say`Every kit with its mark, whether it is in service, and since when it has been ready.`,
	unique: ["kit"],
	columns: {
		kit: typed({ label: say`Kit`, unit: "", value: name(), help: say`The mark on the kit.` }),
		kind: typed({
			label: say`Kind`,
			unit: "",
			value: name(),
			help: say`As listed under kinds of kit.`,
		}),
		status: typed({
			label: say`Status`,
			unit: "",
			value: choice(["in_service", "out_of_service"]),
			help: say`Out of service: in repair, incomplete, or failed its check.`,
		}),
		ready_since: typed({
			label: say`Ready since`,
			unit: "",
			value: optional(date()),
			help: say`Day of its last disinfection; blank when it is not ready.`,
		}),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`Anything to remember.` }),
	},
});

export type KitsRow = RowOf<typeof kitsSheet>;
