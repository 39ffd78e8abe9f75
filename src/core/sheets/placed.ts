import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { date } from "../values/date.ts";
import { mark } from "../values/mark.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";
import { lineId } from "./lineId.ts";

const packs = () => optional(number({ min: 0, max: 1_000_000 }));

export const placedSheet = sheet({
	file: "placed.csv",
	title: say`Orders placed`,
	about: say`Each order from the day it is placed until it is received, in whole or in part, or given up.`,
	optional: true,
	columns: {
		ordered_on: typed({
			label: say`Ordered on`,
			unit: "",
			value: date(),
			help: say`Day it went out.`,
		}),
		item: typed({ label: say`Item`, unit: "", value: name(), help: say`As listed under items.` }),
		packs: typed({
			label: say`Packs`,
			unit: say`packs`,
			value: number({ min: 0, max: 1_000_000 }),
			help: say`How many were ordered; 0 where the order was given up.`,
		}),
		expected_on: typed({
			label: say`Due on`,
			unit: "",
			value: optional(date()),
			help: say`Blank: the day ordered and the item's days to delivery.`,
			added: true,
		}),
		received_on: typed({
			label: say`Received on`,
			unit: "",
			value: optional(date()),
			help: say`Blank while it is on the way.`,
			added: true,
		}),
		packs_received: typed({
			label: say`Packs received`,
			unit: say`packs`,
			value: packs(),
			help: say`Blank: all of them.`,
			added: true,
		}),
		lot: typed({
			label: say`Lot`,
			unit: "",
			value: mark(),
			help: say`Number on the box or bottle that came.`,
			added: true,
		}),
		note: typed({
			label: say`Note`,
			unit: "",
			value: note(),
			help: say`Who, where, why.`,
			added: true,
		}),
		id: lineId(),
	},
});

export type PlacedRow = RowOf<typeof placedSheet>;
