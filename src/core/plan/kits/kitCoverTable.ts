import { calculation, derive, nameFigure } from "../../calculation.ts";
import type { ComputedRow, ComputedTable } from "../../computedTable.ts";
import { type Cover, kitCover } from "../../kits/cover.ts";
import { say } from "../../say.ts";
import { kitCoverSheet } from "../../sheets/kitCover.ts";
import { sources } from "../../sources.ts";
import type { CoverFigures, KindCover } from "./coverFigures.ts";

const unmetWithKits = calculation<{ cover: Cover; kits: number }, number>({
	key: "unmet_per_1000_uses",
	label: say`Needs that find none ready`,
	unit: say`per 1,000 uses`,
	formula: say`Over the rounds: mean uses beyond the kits from one round's start until the next one's kits are ready, less those until its own kits are ready; divided by all uses, × 1,000. A need that finds none still takes a kit of the next round. After each use: the chance that all kits are in reprocessing.`,
	source: sources.palm,
	inputs: {
		cover: { label: say`How many kits are enough`, unit: say`kits` },
		kits: { label: say`Kits`, unit: say`kits`, min: 1 },
	},
	example: { inputs: { cover: kitCover.example.result, kits: 2 }, result: 1.0188, within: 0 },
	compute: ({ cover, kits }) => cover.unmetPer1000[kits - 1] as number,
});

/** For each kind, one row for each number of kits, to three beyond those needed. */
export function kitCoverTable({ kinds }: CoverFigures): ComputedTable<typeof kitCoverSheet> {
	return { sheet: kitCoverSheet, rows: kinds.flatMap(rowsOfKind) };
}

function rowsOfKind({ name, cover }: KindCover): ComputedRow<typeof kitCoverSheet>[] {
	if (!cover.outcome.ok) return [];
	const { kitsNeeded, decidedBy, unmetPer1000 } = cover.outcome.value;
	return unmetPer1000.map((_, i) => {
		const kits = nameFigure(say`Kits`, i + 1);
		return {
			kind: nameFigure(say`Kind`, name),
			kits,
			unmet_per_1000_uses: derive(unmetWithKits, { cover, kits }),
			enough: nameFigure(say`Enough`, i + 1 >= kitsNeeded ? "yes" : "no"),
			deciding: nameFigure(say`Decided by`, i + 1 === kitsNeeded ? decidedBy : null),
		};
	});
}
