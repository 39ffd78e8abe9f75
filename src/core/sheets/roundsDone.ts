import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { yesNo } from "../values/choice.ts";
import { clock } from "../values/clock.ts";
import { date } from "../values/date.ts";
import { mark } from "../values/mark.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";
import { lineId } from "./lineId.ts";

const time = (label: string, help: string) =>
	typed({ label, unit: say`h:min`, value: optional(clock()), help, added: true });
const words = (label: string, help: string) =>
	typed({ label, unit: "", value: note(), help, added: true });
const marked = (label: string, help: string) =>
	typed({ label, unit: "", value: mark(), help, added: true });

export const roundsDoneSheet = sheet({
	file: "rounds-done.csv",
	title: say`Rounds done`,
	about: say`Each round as it was done. What a kit's disinfection, the descaling and the report stand on.`,
	optional: true,
	unique: ["date", "start"],
	columns: {
		date: typed({ label: say`Date`, unit: "", value: date(), help: say`Day the round began.` }),
		start: typed({
			label: say`Start`,
			unit: say`h:min`,
			value: clock(),
			help: say`When it began.`,
		}),
		ended: time(say`Ended`, say`Blank: the start and the minutes planned.`),
		kits: typed({
			label: say`Kits`,
			unit: "",
			value: note(),
			help: say`Their marks, with a space between.`,
		}),
		product: marked(say`Product`, say`Chlorine product used.`),
		lot: marked(say`Lot`, say`Its lot.`),
		litres: typed({
			label: say`Solution made`,
			unit: "L",
			value: optional(number({ min: 0, max: 10_000 })),
			decimals: 1,
			help: say`Soak and wipe solution together.`,
			added: true,
		}),
		strength_reading_pct: typed({
			label: say`Strength read`,
			unit: "%",
			value: optional(number({ min: 0, max: 100, as: "percent" })),
			decimals: 2,
			help: say`By test strip, where one was used.`,
			added: true,
		}),
		soak_in: time(say`Soak in`, say`When the last load went in.`),
		soak_out: time(say`Soak out`, say`When the last load came out.`),
		descaled: typed({
			label: say`Descaled`,
			unit: "",
			value: yesNo(),
			fallback: "no",
			help: say`yes: the vinegar bath was part of this round.`,
			added: true,
		}),
		done_by: words(say`Done by`, say`Who did the round; may be blank.`),
		released_by: words(say`Released by`, say`Who released the kits; may be blank.`),
		note: words(say`Note`, say`Anything out of the ordinary.`),
		id: lineId(),
	},
});

export type RoundsDoneRow = RowOf<typeof roundsDoneSheet>;
