import { typed } from "../column.ts";
import { methods } from "../methods/method.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { choice } from "../values/choice.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { optional } from "../values/valueKind.ts";

export const treatmentsSheet = sheet({
	file: "treatments.csv",
	title: say`How pieces are treated`,
	about: say`Pieces that go another way than the settings say: what each is disinfected by, or that it is for single use. A kit may go several ways in one round.`,
	optional: true,
	unique: ["kind", "piece"],
	columns: {
		kind: typed({
			label: say`Kind`,
			unit: "",
			value: name(),
			help: say`As listed under kinds of kit.`,
		}),
		piece: typed({
			label: say`Piece`,
			unit: "",
			value: optional(name()),
			help: say`As listed with the kind. Blank: all its pieces that have no line of their own.`,
		}),
		method: typed({
			label: say`Treated by`,
			unit: "",
			value: choice(methods),
			help: say`Chlorine soak, boiling and steam: high-level disinfection, not sterilisation. Autoclave: sent away and sterilised. Single use: thrown away, a new one for each kit used.`,
		}),
		note: typed({
			label: say`Note`,
			unit: "",
			value: note(),
			help: say`Whose instruction it is: the maker's, with edition and page, or the national protocol.`,
		}),
	},
});
