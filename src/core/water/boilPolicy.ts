/** When water is boiled for rinsing: for each round, to stand ready, or once a used kit waits. */
export const boilPolicies = ["every_round", "standing", "after_use"] as const;

export type BoilPolicy = (typeof boilPolicies)[number];

/** How the unit's choice is kept: with no rounds to boil for, water stands ready for the next kit. */
export function policyKept(chosen: BoilPolicy, afterEachUse: boolean): BoilPolicy {
	return afterEachUse && chosen === "every_round" ? "standing" : chosen;
}
