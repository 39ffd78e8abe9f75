import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { oneRound, type RoundsOfDay } from "./roundsOfDay.ts";

interface Inputs {
	readonly rounds: RoundsOfDay;
	/** Of each kind, whether its kits go that way. */
	readonly ofKinds: readonly boolean[];
}

/** The rounds of a day with only the kits of some kinds in them. */
export const roundsOfKinds = calculation<Inputs, RoundsOfDay>({
	key: "rounds_of_kinds",
	label: say`Kits in each round that go this way, average`,
	unit: say`kits`,
	formula: say`The kits of a round without those of kinds of which no piece goes this way.`,
	source: definition,
	inputs: {
		rounds: { label: say`Kits in each round, average`, unit: say`kits` },
		ofKinds: { label: say`Kinds of kit that go this way`, unit: "" },
	},
	example: {
		inputs: {
			rounds: { ...oneRound(2), byKind: [[1.5], [0.5]] },
			ofKinds: [true, false],
		},
		result: oneRound(1.5),
		within: 0,
	},
	compute: ({ rounds, ofKinds }) => {
		const only = <T>(kinds: readonly T[]) => kinds.filter((_, kind) => ofKinds[kind]);
		const byKind = only(rounds.byKind);
		const kits = rounds.kits.map((_, i) => sumOfAll(byKind.map((of) => of[i] as number)));
		const { forecast } = rounds;
		if (!forecast) return { ...rounds, kits, byKind };
		return { ...rounds, kits, byKind, forecast: { ...forecast, sure: only(forecast.sure) } };
	},
});
