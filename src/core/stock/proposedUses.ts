import { say } from "../say.ts";
import { estimate, type Source } from "../sources.ts";
import type { Usage } from "./ratesOfItem.ts";

/** Something a round uses, as a unit could begin with it, and where the quantity comes from. */
export interface ProposedUse extends Usage {
	readonly item: string;
	readonly group: "gauze" | "gloves" | "other";
	/** Unit of the quantity, as people write it. */
	readonly measure: string;
	/** How the quantity is meant. */
	readonly note: string;
	readonly source: Source;
}

const PIECE = say`piece`;
const PAIR = say`pair`;
const remembered: Source = { title: say`Common label, 2 to 5 mL a litre`, mark: "from memory" };

type Of = Omit<ProposedUse, "note" | "source">;

const of = (
	group: Of["group"],
	measure: string,
	item: string,
	basis: Of["basis"],
	quantity: number,
	note: string,
	source: Source = estimate,
): ProposedUse => ({ item, group, measure, basis, quantity, note, source });

/** Of something that is washed and used again: its part for one round. */
const lasting = (rounds: number): [number, string] => [
	1 / rounds,
	say`used again; one lasts about ${rounds} rounds`,
];

/**
 * What a round of the proposed steps uses, for a person to check: no published list for a
 * newborn kit was found, so all but the soap is an estimate.
 *
 * @param soapyLitres soapy water of a round
 * @param vinegarLitres vinegar of a descaling; undefined where the unit never descales
 */
export function proposedUses(
	soapyLitres: number,
	vinegarLitres: number | undefined,
): readonly ProposedUse[] {
	const soapMl = 5 * soapyLitres;
	return [
		of(
			"gauze",
			PIECE,
			say`Sterile gauze for drying`,
			"kit",
			24,
			say`two for each of twelve pieces, inside and out`,
		),
		of("gauze", PIECE, say`Gauze for wiping`, "kit", 2, say`wiping off right after use`),
		of(
			"gloves",
			PAIR,
			say`Sterile gloves`,
			"worker_round",
			1,
			say`for drying and putting together`,
		),
		of(
			"gloves",
			PAIR,
			say`Examination gloves`,
			"worker_round",
			1,
			say`for wiping and taking apart`,
		),
		of("gloves", PAIR, say`Utility gloves`, "worker_round", ...lasting(20)),
		of("other", PIECE, say`Apron`, "worker_round", ...lasting(20)),
		of("other", PIECE, say`Mask`, "worker_round", 1, say`one for each person in a round`),
		of("other", PIECE, say`Eye protection`, "worker_round", ...lasting(100)),
		of("other", PIECE, say`Cap`, "worker_round", 1, say`one for each person in a round`),
		of(
			"other",
			"mL",
			say`Liquid soap`,
			"round",
			soapMl,
			say`5 mL a litre of soapy water`,
			remembered,
		),
		of("other", PIECE, say`Soft brush`, "round", ...lasting(50)),
		of("other", PIECE, say`Fine pick for narrow tips`, "round", ...lasting(50)),
		...(vinegarLitres === undefined
			? []
			: [
					of(
						"other",
						"L",
						say`Vinegar`,
						"descale",
						vinegarLitres,
						say`for one descaling bath, by the settings`,
					),
				]),
		of("other", PIECE, say`Label`, "round", 1, say`on the solution`),
		of("other", PIECE, say`Label`, "kit", 1, say`on the packed kit`),
		of("other", PIECE, say`Sterile linen`, "round", ...lasting(50)),
		of("other", PIECE, say`Covered container, disinfected`, "kit", ...lasting(200)),
		of("other", PIECE, say`Forceps with smooth ends`, "round", ...lasting(500)),
	];
}
