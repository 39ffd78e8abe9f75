import type { Amounts } from "../amounts.ts";
import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { upTo } from "../upTo.ts";

/** Measures of which nobody sets a part aside, as people write them. */
const COUNTED =
	/^(pieces?|pairs?|tablets?|sets?|boxes|box|rolls?|pièces?|paires?|comprimés?|jeux|jeu|boîtes?|rouleaux?)$/i;

/** Whether things in this measure are counted, not measured out. */
export function isCounted(measure: string): boolean {
	return COUNTED.test(measure.trim());
}

/** What is set aside of something counted in whole pieces. */
export const wholePieces = calculation<{ use: number }, number>({
	key: "whole_pieces",
	label: say`Use, prepare for`,
	unit: say`in the item's measure`,
	formula: say`Use to prepare for, in whole pieces.`,
	source: definition,
	rounding: say`Up to whole pieces.`,
	inputs: { use: { label: say`Use, prepare for`, unit: say`in the item's measure`, min: 0 } },
	example: { inputs: { use: 12.5 }, result: 13, within: 0 },
	follows: { input: "use", turned: (amounts) => amounts },
	compute: ({ use }) => upTo(use, 1),
});

/** The same beside the next smaller amount, which is whole as well. */
export const wholePiecesOfGroup = calculation<{ use: number }, number>({
	...wholePieces,
	key: "whole_pieces_of_group",
	follows: { input: "use", turned: inWhole },
});

/** What may come is set aside in whole pieces too: of three tenths a kit, one piece for one kit, two and three. */
function inWhole({ counts, size }: Amounts): Amounts {
	if (Number.isInteger(size)) return { counts, size };
	const { first, chance, places } = counts;
	const inSteps = (at: number) => places?.[at] ?? first + at;
	const whole = chance.map((_, at) => upTo(inSteps(at) * size, 1) / size);
	return { counts: { ...counts, places: whole }, size };
}
