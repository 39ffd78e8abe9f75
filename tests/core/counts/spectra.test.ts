import { describe, expect, test } from "vitest";
import { always, type Counts } from "../../../src/core/counts/counts.ts";
import { poissonTerms } from "../../../src/core/counts/poisson.ts";
import { countsOf, spectraOf, spectrumOfAmount } from "../../../src/core/counts/spectra.ts";
import { moved } from "../../../src/core/counts/spread.ts";
import { expectWithin } from "../../expectWithin.ts";

const LENGTH = 64;

/** The one that stands at a place among others, there and back again. */
function backAgain(all: readonly Counts[], place: number): Counts {
	const { re, im, each } = spectraOf(all, LENGTH);
	const from = place * each;
	return countsOf({ re: re.slice(from, from + each), im: im.slice(from, from + each) }, LENGTH);
}

function expectSame(found: Counts, wanted: Counts): void {
	for (let amount = 0; amount < LENGTH; amount++)
		expectWithin(
			found.chance[amount - found.first] ?? 0,
			wanted.chance[amount - wanted.first] ?? 0,
			1e-15,
			`chance of ${amount}`,
		);
}

const three = [poissonTerms(2), { first: 7, chance: Float64Array.of(0.25, 0, 0.5) }, always(0)];

test.each([0, 1, 2])("of three counts the one at %d comes back as it was", (place) => {
	expectSame(backAgain(three, place), three[place] as Counts);
});

test("a few counts after many are not mixed with them", () => {
	spectraOf([...three, ...three, ...three], 2 * LENGTH);
	expectSame(backAgain([poissonTerms(5)], 0), poissonTerms(5));
});

test("what is beyond the length is left out", () => {
	const far = { first: 60, chance: new Float64Array(10).fill(0.1) };
	expectSame(backAgain([far], 0), { first: 60, chance: new Float64Array(4).fill(0.1) });
});

test("only the first amounts are asked for", () => {
	const { re, im } = spectraOf([poissonTerms(5)], LENGTH);
	const few = countsOf({ re: re.slice(0, 33), im: im.slice(0, 33) }, 4);
	expect(few.first + few.chance.length).toBe(4);
	expectWithin(few.chance[3 - few.first] as number, (Math.exp(-5) * 125) / 6, 1e-15, "chance");
});

describe("an amount that is known is shared between two whole ones", () => {
	test.each([0, 0.25, 1, 17.5, 40, 62.999])("%d", (amount) => {
		expectSame(countsOf(spectrumOfAmount(amount, LENGTH), LENGTH), moved(always(0), amount));
	});
});
