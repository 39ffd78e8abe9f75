import { typed } from "../column.ts";
import { sheet } from "../sheet.ts";
import { sources } from "../sources.ts";
import { number } from "../values/number.ts";
import { name } from "../values/text.ts";

export const kindUseSheet = sheet({
	file: "kind-use.csv",
	title: "Births that use each kind of kit",
	about:
		"Where a unit has several kinds of kit, how many of 100 births use each. Without it one share, from the settings, holds for all kits alike.",
	optional: true,
	unique: ["kind"],
	columns: {
		kind: typed({ label: "Kind", unit: "", value: name(), help: "As listed under kinds of kit." }),
		uses_per_100_births: typed({
			label: "Uses per 100 births",
			unit: "kits/100 births",
			value: number({ min: 0, max: 100 }),
			decimals: 1,
			help: "How many of 100 births use a kit of this kind.",
			source: sources.enBirth,
		}),
	},
});
