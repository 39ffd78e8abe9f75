import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { dateTime } from "../values/dateTime.ts";
import { number } from "../values/number.ts";
import { name, note } from "../values/text.ts";
import { optional } from "../values/valueKind.ts";

const test = (label: string, help: string) =>
	typed({ label, unit: "", value: optional(yesNo()), help });

export const checksSheet = sheet({
	file: "checks.csv",
	title: "Readiness checks",
	about: "Each time a kit is put together: pieces counted, cleanliness, function tests.",
	optional: true,
	columns: {
		checked_at: typed({
			label: "Checked at",
			unit: "",
			value: dateTime(),
			help: "Date and time of the check.",
		}),
		kit: typed({ label: "Kit", unit: "", value: name(), help: "The mark on the kit." }),
		pieces_counted: typed({
			label: "Pieces counted",
			unit: "pieces",
			value: optional(number({ min: 0, max: 10_000, whole: true })),
			help: "All loose pieces, counted before putting together.",
		}),
		clean: test("Clean", "No dirt, no scale, dry, no smell."),
		bag_refills: test("Bag refills", "Outlet blocked, squeezed and let go: refills at once."),
		valve_moves: test("Valve moves", "Opens on squeezing, closes after."),
		seal_holds: test("Seal holds", "Outlet blocked: the bag resists, no leak is heard."),
		relief_opens: test("Relief opens", "The pressure relief opens when squeezed hard."),
		suction_holds: test("Suction holds", "Draws in and pushes out fully, no bubbles."),
		note: typed({ label: "Note", unit: "", value: note(), help: "What was seen." }),
	},
});

export type ChecksRow = RowOf<typeof checksSheet>;
