import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";

export const kindsSheet = sheet({
	file: "kinds.csv",
	title: say`Kinds of kit and their pieces`,
	about: say`The list that a kit is counted against.`,
	unique: ["kind", "piece"],
	columns: {
		kind: typed({ label: say`Kind`, unit: "", value: name(), help: say`Kind of kit.` }),
		piece: typed({
			label: say`Piece`,
			unit: "",
			value: name(),
			help: say`A part that comes loose.`,
		}),
		count: typed({
			label: say`Count`,
			unit: say`pieces`,
			value: number({ min: 1, max: 100, whole: true }),
			help: say`How many of it belong to one kit.`,
		}),
	},
});

export type KindsRow = RowOf<typeof kindsSheet>;
