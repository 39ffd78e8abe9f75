import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pileUnits } from "../../../src/io/district/pileUnits.ts";
import { UnitPiles, unitsOfPile } from "../../../src/io/district/unitPiles.ts";
import { readUnits } from "../../../src/io/readUnits.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { unitsReader } from "./unitsReader.ts";

/** Characters of a piece, so that even a short file is read in several. */
const ENOUGH = 16;

/** Read piece by piece and piled up on the disk, a set comes to what it does read at once. */
export const longUnitsReader: Reader = {
	...unitsReader,
	name: "the same, piece by piece",
	async check(input) {
		// Another encoding shows in the millions of characters of a real piece, not in so few.
		if (input.includes(0)) return;
		const place = mkdtempSync(join(tmpdir(), "pieces-"));
		try {
			const path = join(place, "births.csv");
			writeFileSync(path, input);
			const piles = new UnitPiles(join(place, "piles"));
			const { headers, problems } = await pileUnits([path], piles, {}, ENOUGH);
			const units = [];
			for await (const pile of piles.piles()) units.push(...(await unitsOfPile(pile, headers)));
			const whole = readUnits([{ name: "births.csv", bytes: input }]);
			expectSame(
				{ units, problems },
				{ units: whole.units, problems: whole.problems },
				"otherwise",
			);
		} finally {
			rmSync(place, { recursive: true });
		}
	},
};
