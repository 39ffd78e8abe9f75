import { describe, expect, test } from "vitest";
import { proposedUses } from "../../../src/core/stock/proposedUses.ts";

/** All that may be proposed, in the order of the work. */
const all = [
	"gauze | Sterile gauze for drying | kit | 24 piece | two for each of twelve pieces, inside and out | estimate",
	"gauze | Gauze for wiping | kit | 2 piece | wiping off right after use | estimate",
	"gloves | Sterile gloves | worker_round | 1 pair | for drying and putting together | estimate",
	"gloves | Examination gloves | worker_round | 1 pair | for wiping and taking apart | estimate",
	"gloves | Utility gloves | worker_round | 0.05 pair | used again; one lasts about 20 rounds | estimate",
	"other | Apron | worker_round | 0.05 piece | used again; one lasts about 20 rounds | estimate",
	"other | Mask | worker_round | 1 piece | one for each person in a round | estimate",
	"other | Eye protection | worker_round | 0.01 piece | used again; one lasts about 100 rounds | estimate",
	"other | Cap | worker_round | 1 piece | one for each person in a round | estimate",
	"other | Liquid soap | round | 20 mL | 5 mL a litre of soapy water | from memory",
	"other | Soft brush | round | 0.02 piece | used again; one lasts about 50 rounds | estimate",
	"other | Fine pick for narrow tips | round | 0.02 piece | used again; one lasts about 50 rounds | estimate",
	"other | Vinegar | descale | 0.5 L | for one descaling bath, by the settings | estimate",
	"other | Label | round | 1 piece | on the solution | estimate",
	"other | Label | kit | 1 piece | on the packed kit | estimate",
	"other | Wrap for the autoclave | kit | 1 piece | one for each kit sent away | estimate",
	"other | Indicator tape, a strip | kit | 1 piece | one for each kit sent away | estimate",
	"other | Sterile linen | round | 0.02 piece | used again; one lasts about 50 rounds | estimate",
	"other | Covered container, disinfected | kit | 0.005 piece | used again; one lasts about 200 rounds | estimate",
	"other | Forceps with smooth ends | round | 0.002 piece | used again; one lasts about 500 rounds | estimate",
] as const;

const lines = (...asked: Parameters<typeof proposedUses>) =>
	proposedUses(...asked).map(({ group, item, basis, quantity, measure, note, source }) =>
		[group, item, basis, `${quantity} ${measure}`, note, source.mark].join(" | "),
	);
const without = (...items: string[]) =>
	all.filter((line) => !items.some((item) => line.includes(`| ${item}`)));

const MIXED = "Label | round";
const WRAPPED = ["Wrap", "Indicator"];
const STERILE = ["Sterile gauze", "Sterile gloves", "Sterile linen", "Forceps"];
const WASHED = ["Gauze", "Utility", "Liquid soap", "Soft brush", "Fine pick", "Vinegar"];

describe("what is proposed of what a round uses", () => {
	test("by soaking, with some pieces in the autoclave: everything, by 4 L of soapy water and 0.5 L of vinegar", () => {
		expect(lines(["chlorine", "autoclave"], true, 4, 0.5)).toEqual(all);
	});

	test.each([["boiling", "single_use"], ["steam", "single_use"], ["boiling"]] as const)(
		"by %s %s nothing is mixed or wrapped; what never descales takes no vinegar",
		(...methods) => {
			expect(lines(methods, false, 4, undefined)).toEqual(without(MIXED, "Vinegar", ...WRAPPED));
		},
	);

	test("by autoclave alone nothing is dried by hand, put into a container or mixed", () => {
		expect(lines(["autoclave"], false, 4, 0.5)).toEqual(without(MIXED, "Covered", ...STERILE));
	});

	test("of what is thrown away nothing is washed; where something is wiped a solution is mixed", () => {
		expect(lines(["single_use"], true, 4, 0.5)).toEqual(without(...STERILE, ...WRAPPED, ...WASHED));
	});
});
