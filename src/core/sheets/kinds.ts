import { typed } from "../column.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { number } from "../values/number.ts";
import { name } from "../values/text.ts";

export const kindsSheet = sheet({
	file: "kinds.csv",
	title: "Kinds of kit and their pieces",
	about: "The list that a kit is counted against.",
	unique: ["kind", "piece"],
	columns: {
		kind: typed({ label: "Kind", unit: "", value: name(), help: "Kind of kit." }),
		piece: typed({ label: "Piece", unit: "", value: name(), help: "A part that comes loose." }),
		count: typed({
			label: "Count",
			unit: "pieces",
			value: number({ min: 1, max: 100, whole: true }),
			help: "How many of it belong to one kit.",
		}),
	},
});

export type KindsRow = RowOf<typeof kindsSheet>;
