import { typed } from "../column.ts";
import { say } from "../say.ts";
import { estimate } from "../source.ts";
import { sources } from "../sources.ts";
import { choice } from "../values/choice.ts";
import { number } from "../values/number.ts";
import { methods } from "./method.ts";

export const methodSettings = {
	method: typed({
		label: say`How pieces are disinfected`,
		unit: "",
		value: choice(methods),
		fallback: "chlorine",
		help: say`For every piece that no line under “How pieces are treated” speaks of. The maker's instructions and the national protocol decide. Chlorine, boiling and steam disinfect to a high level and do not sterilise; an autoclave sterilises; what is for single use is replaced.`,
		source: sources.methods,
		added: true,
	}),
	disinfect_boil_minutes: typed({
		label: say`Pieces are kept at the boil for`,
		unit: "min",
		value: number({ min: 1, max: 120 }),
		fallback: 20,
		help: say`From a rolling boil, lid on, every piece under water, nothing added after. Sources name 10 to 20 minutes.`,
		source: sources.boilPieces,
		added: true,
	}),
	disinfect_boil_litres: typed({
		label: say`Water to boil a load of pieces in`,
		unit: "L",
		value: number({ min: 0.1, max: 100 }),
		fallback: 5,
		decimals: 1,
		help: say`Enough to stand over all pieces.`,
		source: estimate,
		added: true,
	}),
	boil_capacity_kits: typed({
		label: say`Kits boiled at once`,
		unit: say`kits`,
		value: number({ min: 1, max: 50, whole: true }),
		fallback: 3,
		help: say`How many kits' pieces lie under the water in the pot: one load.`,
		source: estimate,
		added: true,
	}),
	steam_minutes: typed({
		label: say`Pieces are kept in steam for`,
		unit: "min",
		value: number({ min: 1, max: 120 }),
		fallback: 20,
		help: say`From when steam comes, lid on.`,
		source: sources.steamPieces,
		added: true,
	}),
	steam_litres: typed({
		label: say`Water to steam a load of pieces`,
		unit: "L",
		value: number({ min: 0.1, max: 100 }),
		fallback: 1.5,
		decimals: 1,
		help: say`Under the rack, below the pieces. What boils away is planned on top.`,
		source: estimate,
		added: true,
	}),
	steam_capacity_kits: typed({
		label: say`Kits steamed at once`,
		unit: say`kits`,
		value: number({ min: 1, max: 50, whole: true }),
		fallback: 3,
		help: say`How many kits' pieces lie on the rack without covering each other: one load.`,
		source: estimate,
		added: true,
	}),
	autoclave_turnaround_hours: typed({
		label: say`An autoclaved kit is back after`,
		unit: "h",
		value: number({ min: 0.5, max: 720 }),
		fallback: 24,
		help: say`From the start of the round that sends it away to the kit standing ready again.`,
		source: estimate,
		added: true,
	}),
	sterile_life_days: typed({
		label: say`Days an autoclaved kit stays ready`,
		unit: say`days`,
		value: number({ min: 0.25, max: 366 }),
		fallback: 21,
		decimals: 0,
		help: say`For a kit whose every piece is autoclaved or for single use, wrapped, dry and unopened. A wrap that is wet, torn or opened ends it at once.`,
		source: sources.sterileLife,
		added: true,
	}),
};
