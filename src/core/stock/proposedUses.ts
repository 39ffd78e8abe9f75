import type { Method } from "../methods/method.ts";
import { say } from "../say.ts";
import { estimate, type Source } from "../source.ts";
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

/** Methods that wash first, and those after which pieces are clean, wet and not wrapped. */
const WASHED: readonly Method[] = ["chlorine", "boiling", "steam", "autoclave"];
const WET: readonly Method[] = ["chlorine", "boiling", "steam"];

/**
 * What a round of the proposed steps uses, for a person to check: no published list for a
 * newborn kit was found, so all but the soap is an estimate.
 *
 * @param used methods that the unit's pieces go by, at least one
 * @param isMixed whether rounds mix chlorine solution
 * @param soapyLitres soapy water of a round
 * @param vinegarLitres vinegar of a descaling; undefined where the unit never descales
 */
export function proposedUses(
	used: readonly Method[],
	isMixed: boolean,
	soapyLitres: number,
	vinegarLitres: number | undefined,
): readonly ProposedUse[] {
	const isWashed = used.some((method) => WASHED.includes(method));
	const isWet = used.some((method) => WET.includes(method));
	return [
		...(isWet ? drying : []),
		...(isWashed
			? [of("gauze", PIECE, say`Gauze for wiping`, "kit", 2, say`wiping off right after use`)]
			: []),
		...(isWet ? [sterileGloves] : []),
		examinationGloves,
		...(isWashed ? [of("gloves", PAIR, say`Utility gloves`, "worker_round", ...lasting(20))] : []),
		...worn,
		...(isWashed ? washing(5 * soapyLitres) : []),
		...(isWashed && vinegarLitres !== undefined ? [vinegar(vinegarLitres)] : []),
		...(isMixed ? [of("other", PIECE, say`Label`, "round", 1, say`on the solution`)] : []),
		of("other", PIECE, say`Label`, "kit", 1, say`on the packed kit`),
		...(used.includes("autoclave") ? wrapping : []),
		...(isWet ? [of("other", PIECE, say`Sterile linen`, "round", ...lasting(50))] : []),
		...(used.some((method) => method !== "autoclave")
			? [of("other", PIECE, say`Covered container, disinfected`, "kit", ...lasting(200))]
			: []),
		...(isWet ? [of("other", PIECE, say`Forceps with smooth ends`, "round", ...lasting(500))] : []),
	];
}

const drying = [
	of(
		"gauze",
		PIECE,
		say`Sterile gauze for drying`,
		"kit",
		24,
		say`two for each of twelve pieces, inside and out`,
	),
];
const sterileGloves = of(
	"gloves",
	PAIR,
	say`Sterile gloves`,
	"worker_round",
	1,
	say`for drying and putting together`,
);
const examinationGloves = of(
	"gloves",
	PAIR,
	say`Examination gloves`,
	"worker_round",
	1,
	say`for wiping and taking apart`,
);
const worn = [
	of("other", PIECE, say`Apron`, "worker_round", ...lasting(20)),
	of("other", PIECE, say`Mask`, "worker_round", 1, say`one for each person in a round`),
	of("other", PIECE, say`Eye protection`, "worker_round", ...lasting(100)),
	of("other", PIECE, say`Cap`, "worker_round", 1, say`one for each person in a round`),
];
const wrapping = [
	of("other", PIECE, say`Wrap for the autoclave`, "kit", 1, say`one for each kit sent away`),
	of("other", PIECE, say`Indicator tape, a strip`, "kit", 1, say`one for each kit sent away`),
];

function washing(soapMl: number): ProposedUse[] {
	return [
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
	];
}

function vinegar(litres: number): ProposedUse {
	return of(
		"other",
		"L",
		say`Vinegar`,
		"descale",
		litres,
		say`for one descaling bath, by the settings`,
	);
}
