import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { commonPractice } from "../source.ts";
import type { Rates } from "./ratesOfItem.ts";

/**
 * What stops when an item is used up. "disinfection": no solution can be made. "safe_rounds": no round
 * is safe. "descaling": rounds go on, descaling does not. "less": rounds go on without it, poorer.
 */
export const stopped = ["disinfection", "safe_rounds", "descaling", "less"] as const;
export type Stopped = (typeof stopped)[number];

/** Whether a round cannot do without what stops. */
export function isNeeded(stops: Stopped): boolean {
	return stops === "disinfection" || stops === "safe_rounds";
}

interface Inputs {
	readonly rates: Rates;
	/** Pieces opened for each kit used. */
	readonly newPieces: boolean;
	readonly isMixedFrom: boolean;
	/** What the list of items says; null where it says nothing. */
	readonly said: "yes" | "no" | null;
}

export const stopsWithout = calculation<Inputs, Stopped>({
	key: "stops_without",
	label: say`What stops without it`,
	unit: "",
	formula: say`The chlorine product in use: disinfection. Else, where the list of items says yes, or says nothing and some goes for a round, load, kit, piece or person: every safe round. Else, where some goes for a descaling: the descaling. Else nothing; rounds go on, poorer.`,
	source: commonPractice,
	caution: say.safety`Only qualified staff can judge what a round can do without; where this is wrong, say so in the list of items.`,
	inputs: {
		rates: { label: say`How much goes each time`, unit: say`in the item's measure` },
		newPieces: { label: say`New pieces for a kit used`, unit: "" },
		isMixedFrom: { label: say`Chlorine product in use`, unit: "" },
		said: { label: say`No safe round without it`, unit: "" },
	},
	example: {
		inputs: {
			rates: { perDay: 0, perRound: 0, perLoad: [0], perKit: [8], perDescale: 0 },
			newPieces: false,
			isMixedFrom: false,
			said: null,
		},
		result: "safe_rounds",
		within: 0,
	},
	compute: ({ rates, newPieces, isMixedFrom, said }) => {
		if (isMixedFrom) return "disinfection";
		if (said === "yes" || (said === null && (newPieces || goesForRounds(rates))))
			return "safe_rounds";
		return rates.perDescale > 0 ? "descaling" : "less";
	},
});

function goesForRounds({ perRound, perLoad, perKit }: Rates): boolean {
	return [perRound, ...perLoad, ...perKit].some((quantity) => quantity > 0);
}
