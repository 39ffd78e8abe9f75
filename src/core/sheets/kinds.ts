import { typed } from "../column.ts";
import { methods } from "../methods/method.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choices } from "../values/choices.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

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
		replace_after_rounds: typed({
			label: say`Replace after`,
			unit: say`rounds`,
			value: optional(number({ min: 1, max: 100_000, whole: true })),
			decimals: 0,
			help: say`After how many rounds the maker asks for a new one; blank: no limit. Rounds count from the first one written down, or from the day a spare of this name was issued in the journal with the kit's mark in its note.`,
			added: true,
		}),
		never_by: typed({
			label: say`Never by`,
			unit: "",
			value: choices(methods),
			help: say`Methods that the maker of this piece forbids, with a space between. The plan then refuses to put the piece there.`,
			added: true,
		}),
	},
});

export type KindsRow = RowOf<typeof kindsSheet>;
