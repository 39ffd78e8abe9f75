import { calculation } from "../calculation.ts";
import { type LoadMethod, loadMethods } from "../methods/method.ts";
import type { MethodsOfKits } from "../methods/methodsOfKits.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";

/** What one load of a method takes. */
export interface LoadSize {
	readonly method: LoadMethod;
	/** Kits at once. */
	readonly kits: number;
	/** Which kinds of kit go by the method, in the order of the kinds planned for; absent: all. */
	readonly ofKinds?: readonly boolean[];
}

/** The loads of each method that a round's kits go by, in the order of the methods. */
export type Loads = readonly LoadSize[];

/** One method, by which all kits go. @example soaks(3): three kits in one soak */
export function soaks(kits: number): Loads {
	return [{ method: "chlorine", kits }];
}

/** How many loads a step belongs to in a round with so many kits. */
export function loadsOfStep(loads: Loads, kits: number, method: string | null | undefined): number {
	return loads.reduce(
		(sum, load) => sum + (isDoneFor(load, method) ? Math.ceil(kits / load.kits) : 0),
		0,
	);
}

/** Whether a step is done in the loads of a method: one of its own method, or of none. */
export function isDoneFor({ method }: LoadSize, ofStep: string | null | undefined): boolean {
	return (ofStep ?? method) === method;
}

/** The kits of a round that go by a method. @param byKind kits of each kind */
export function kitsOfLoad({ ofKinds }: LoadSize, byKind: readonly number[]): number {
	return byKind.reduce((sum, kits, kind) => sum + (ofKinds?.[kind] === false ? 0 : kits), 0);
}

interface Inputs {
	/** Of each kind planned for. */
	readonly kinds: readonly MethodsOfKits[];
	/** Kits in one load of each method that some kit goes by, in the order of the methods. */
	readonly sizes: readonly number[];
}

/** Methods of a round that are gone through load by load. */
export function loadMethodsOf(kinds: readonly MethodsOfKits[]): LoadMethod[] {
	return loadMethods.filter((method) => kinds.some((kind) => kind.methods.includes(method)));
}

/** What one load of each method takes. */
export const loadsByMethod = calculation<Inputs, Loads>({
	key: "loads_by_method",
	label: say`Kits in one load of each method`,
	unit: say`kits`,
	formula: say`As set for each method that some piece of a kit goes by. A kit goes into a load of each of its methods.`,
	source: definition,
	inputs: {
		kinds: { label: say`How the pieces are treated`, unit: "" },
		sizes: { label: say`Kits in one load`, unit: say`kits` },
	},
	example: {
		inputs: { kinds: [{ methods: ["boiling", "single_use"], pieces: [] }], sizes: [4] },
		result: [{ method: "boiling", kits: 4 }],
		within: 0,
	},
	compute: ({ kinds, sizes }) =>
		loadMethodsOf(kinds).map((method, i) => {
			const kits = sizes[i] as number;
			const ofKinds = kinds.map((kind) => kind.methods.includes(method));
			return ofKinds.every(Boolean) ? { method, kits } : { method, kits, ofKinds };
		}),
});
