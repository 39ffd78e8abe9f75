import { typed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { sources } from "../sources.ts";
import { name } from "../values/name.ts";
import { number } from "../values/number.ts";

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
			source: sources.enBirth,
		}),
	},
});
