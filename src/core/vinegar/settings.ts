import { typed } from "../column.ts";
import { say } from "../say.ts";
import { commonPractice, estimate } from "../source.ts";
import { sources } from "../sources.ts";
import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

export const vinegarSettings = {
	descale_every_rounds: typed({
		label: say`Descale every so many rounds that run`,
		unit: say`rounds`,
		value: number({ min: 0, max: 1000, whole: true }),
		fallback: 7,
		help: say`0: never. A visible white crust is the reason to do it sooner.`,
		source: estimate,
	}),
	last_descaled_on: typed({
		label: say`Last descaled on`,
		unit: "",
		value: optional(date()),
		fallback: null,
		help: say`Where no round of the record says so; the rounds since then are counted from the rounds done.`,
		source: commonPractice,
		added: true,
	}),
	descale_fill_litres: typed({
		label: say`Descaling bath`,
		unit: "L",
		value: number({ min: 0.1, max: 100 }),
		fallback: 2,
		decimals: 1,
		help: say`Diluted vinegar, in a vessel of its own.`,
		source: estimate,
	}),
	vinegar_acid_pct: typed({
		label: say`Acid in the vinegar`,
		unit: "%",
		value: number({ min: 1, max: 80, as: "percent" }),
		fallback: 5,
		decimals: 1,
		help: say`From the label.`,
		source: sources.vinegarStrength,
	}),
	descale_acid_pct: typed({
		label: say`Acid wanted in the bath`,
		unit: "%",
		value: number({ min: 0.1, max: 10, as: "percent" }),
		fallback: 2.5,
		decimals: 1,
		help: say`2.5 % from 5 % vinegar is equal parts vinegar and water.`,
		source: sources.descaling,
	}),
	descale_rinse_litres: typed({
		label: say`Water to rinse the vinegar off`,
		unit: "L",
		value: number({ min: 0, max: 100 }),
		fallback: 5,
		decimals: 1,
		help: say`Poured away apart from anything with chlorine.`,
		source: estimate,
		added: true,
	}),
	descale_rinse_minutes: typed({
		label: say`Rinse and drain after vinegar`,
		unit: "min",
		value: number({ min: 1, max: 120 }),
		fallback: 5,
		help: say`Until there is no smell. It always stands between vinegar and chlorine.`,
		source: estimate,
		added: true,
	}),
	descale_minutes: typed({
		label: say`Time in the descaling bath`,
		unit: "min",
		value: number({ min: 1, max: 240 }),
		fallback: 10,
		help: say`Then rinse and drain until there is no smell, before any chlorine.`,
		source: sources.descaling,
	}),
};
