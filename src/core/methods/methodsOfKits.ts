import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { type Method, methods } from "./method.ts";

/** Pieces of one name in a kit, and how they are treated. */
export interface TreatedPiece {
	readonly kind: string;
	readonly piece: string;
	readonly count: number;
	readonly method: Method;
}

/** How the kits of some kinds are treated. */
export interface MethodsOfKits {
	/** In the order in which a round goes through them. */
	readonly methods: readonly Method[];
	readonly pieces: readonly TreatedPiece[];
}

interface Treatment {
	readonly kind: string;
	/** null: all pieces of the kind that have no line of their own. */
	readonly piece: string | null;
	readonly method: Method;
}

interface Inputs {
	/** Kinds whose kits these are, also those of which no piece is listed. */
	readonly kinds: readonly string[];
	readonly pieces: readonly Omit<TreatedPiece, "method">[];
	readonly treatments: readonly Treatment[];
	readonly method: Method;
}

/** What a round does with the kits of some kinds: which methods, and which piece by which. */
export const methodsOfKits = calculation<Inputs, MethodsOfKits>({
	key: "methods_of_kits",
	label: say`How the pieces are treated`,
	unit: "",
	formula: say`A piece by its own line; without one by its kind's line for all pieces; without that as the settings say.`,
	source: sources.methods,
	inputs: {
		kinds: { label: say`Kinds of kit`, unit: "" },
		pieces: { label: say`Pieces in a kit`, unit: say`pieces` },
		treatments: { label: say`How pieces are treated`, unit: "" },
		method: { label: say`How pieces are disinfected`, unit: "" },
	},
	example: {
		inputs: {
			kinds: ["K"],
			pieces: [
				{ kind: "K", piece: "bag", count: 1 },
				{ kind: "K", piece: "mask", count: 2 },
			],
			treatments: [{ kind: "K", piece: "mask", method: "boiling" }],
			method: "chlorine",
		},
		result: {
			methods: ["chlorine", "boiling"],
			pieces: [
				{ kind: "K", piece: "bag", count: 1, method: "chlorine" },
				{ kind: "K", piece: "mask", count: 2, method: "boiling" },
			],
		},
		within: 0,
	},
	compute: ({ kinds, pieces, treatments, method }) => {
		const treatmentOf = (kind: string, piece: string | null) =>
			treatments.find((row) => row.kind === kind && row.piece === piece)?.method;
		const treated = pieces
			.filter(({ kind }) => kinds.includes(kind))
			.map((piece) => ({
				...piece,
				method: treatmentOf(piece.kind, piece.piece) ?? treatmentOf(piece.kind, null) ?? method,
			}));
		const bare = kinds.filter((kind) => !treated.some((piece) => piece.kind === kind));
		const used = new Set([
			...treated.map((piece) => piece.method),
			...bare.map((kind) => treatmentOf(kind, null) ?? method),
			...(kinds.length === 0 ? [method] : []),
		]);
		return { methods: methods.filter((one) => used.has(one)), pieces: treated };
	},
});
