import { calculation, derive, type Figure } from "../../calculation.ts";
import { memoize } from "../../memoize.ts";
import type { MethodsOfKits } from "../../methods/methodsOfKits.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import type { Pair } from "../countFigures.ts";

/** None of something, because no kit goes the way that takes it. */
export function noNeed(
	key: string,
	{ label, unit }: { readonly label: string; readonly unit: string },
	treated: Figure<readonly MethodsOfKits[]>,
): Pair {
	const none = derive(noneOf(key, label, unit), { kinds: treated });
	return { expected: none, setAside: none };
}

const noneOf = memoize((key: string, label: string, unit: string) =>
	calculation<{ kinds: readonly MethodsOfKits[] }, number>({
		key: `no_${key}`,
		label,
		unit,
		formula: say`None: no piece goes the way that takes it.`,
		source: definition,
		inputs: { kinds: { label: say`How the pieces are treated`, unit: "" } },
		example: { inputs: { kinds: [{ methods: ["boiling"], pieces: [] }] }, result: 0, within: 0 },
		compute: () => 0,
	}),
);
