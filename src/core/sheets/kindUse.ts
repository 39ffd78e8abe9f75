import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { sources } from "../sources.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const kindUseSheet = sheet({
	file: "kind-use.csv",
	title: say`Births that use each kind of kit`,
	about: say`Where a unit has several kinds of kit, how many of 100 births use each. Without it one share, from the settings, holds for all kits alike.`,
	optional: true,
	unique: ["kind"],
	columns: {
		kind: typed({
			label: say`Kind`,
			unit: "",
			value: name(),
			help: say`As listed under kinds of kit.`,
		}),
		uses_per_100_births: typed({
			label: say`Uses per 100 births`,
			unit: say`kits/100 births`,
			value: number({ min: 0, max: 100 }),
			decimals: 1,
			help: say`How many of 100 births use a kit of this kind.`,
			source: sources.kitShare,
		}),
		beds: typed({
			label: say`Beds it stands beside`,
			unit: say`beds`,
			value: optional(number({ min: 0, max: 200, whole: true })),
			help: say`Delivery beds that have a kit of this kind beside them. Blank: all beds for the kind that most births use, none for the others.`,
			added: true,
		}),
		spares: typed({
			label: say`Spares of it`,
			unit: say`kits`,
			value: optional(number({ min: 0, max: 200, whole: true })),
			help: say`Kits of this kind beyond those beside the beds. Blank: as many as the settings say.`,
			added: true,
		}),
	},
});

export type KindUseRow = RowOf<typeof kindUseSheet>;
