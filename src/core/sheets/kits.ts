import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { date } from "../values/date.ts";
import { name, note } from "../values/text.ts";
import { optional } from "../values/valueKind.ts";

export const kitsSheet = sheet({
	file: "kits.csv",
	title: "Kits of the unit",
	about: "Every kit with its mark, whether it is in service, and since when it has been ready.",
	unique: ["kit"],
	columns: {
		kit: typed({ label: "Kit", unit: "", value: name(), help: "The mark on the kit." }),
		kind: typed({ label: "Kind", unit: "", value: name(), help: "As listed under kinds of kit." }),
		status: typed({
			label: "Status",
			unit: "",
			value: choice(["in_service", "out_of_service"]),
			help: "Out of service: in repair, incomplete, or failed its check.",
		}),
		ready_since: typed({
			label: "Ready since",
			unit: "",
			value: optional(date()),
			help: "Day of its last disinfection; blank when it is not ready.",
		}),
		note: typed({ label: "Note", unit: "", value: note(), help: "Anything to remember." }),
	},
});

export type KitsRow = RowOf<typeof kitsSheet>;
