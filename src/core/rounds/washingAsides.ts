/** How a language speaks of washing what is no piece; parts of patterns, without accents. */
interface WashingWords {
	/** Beginnings of words for washing. */
	readonly washes: string;
	/** Small words between washing and what is washed. */
	readonly between: string;
	/** What is washed and is no piece: hands, places, vessels, cloths. */
	readonly others: string;
	/** What is done to soap or soapy water that is no washing: rinsed off, made, poured away. */
	readonly toSoap: string;
	readonly soap: string;
	/** Anything else: cleaning up, hands washed, a clean cloth. */
	readonly also: readonly string[];
}

/** By language, as the beginnings of words that tell what a step is. */
export const washingAsides: Readonly<Record<string, WashingWords>> = {
	en: {
		washes: "wash|clean|scrub|brush",
		between: "the|your|our|all|both|every|each|and|dry|down|out|off|used|dirty|work|well",
		others:
			"hands?\\b|arms?\\b|side\\b(?! of)|area|place|room|floor|sink|bench|table|counter|basin|bucket|bowl|container|vessel|tray|apron|glove|cloth|towel|linen|gauze|water|station|work",
		toSoap: "rins|mix|mak|prepar|pour|fill|throw|empt",
		soap: "soap",
		also: [
			"clean\\w*[ -](?:up|away)\\b",
			"\\b(?:a|an|the|is|are|on|in|into|onto|with|of|under|everything|fresh) clean\\b",
			"\\bhands?(?: (?:are|is|well))? (?:wash|clean|scrub)\\w*",
			"\\bwash(?:basin|room|cloth)\\w*",
		],
	},
	fr: {
		washes: "lav|nettoy|bross|savonn",
		between:
			"le|la|les|l|un|une|du|de|des|d|au|aux|ses|vos|tout|toute|tous|toutes|et|secher|bien|grand",
		others:
			"mains?\\b|bras|cote\\b(?! d)|poste|plan|place|salle|sol\\b|evier|paillasse|table|bassine|cuvette|seau|recipient|plateau|tablier|gant|linge|torchon|zone|lieu|local",
		toSoap: "rinc|prepar|melang|vers|jet|vid|rempl|elimin|enlev",
		soap: "savon",
		also: ["\\bmains? (?:bien )?lavees?\\b", "\\blavabo\\w*"],
	},
	pt: {
		washes: "lav|limp|escov|ensabo",
		between: "o|a|os|as|um|uma|do|da|dos|das|de|todo|toda|todos|todas|e|secar|bem",
		others:
			"maos?\\b|braco|lado\\b(?! d)|posto|bancada|mesa|sala|chao|pia|lavat|lava-lou|lava-loi|bacia|balde|recipiente|tabuleiro|avental|luva|pano|toalha|zona|area|local",
		toSoap: "enxagu|prepar|mistur|deit|despej|ench|retir|tirar",
		soap: "sabao",
		also: [
			// “limpo” is clean; “limpa as peças” tells somebody to clean them.
			"\\blimp[oa]s?\\b(?! (?:as|os|cada|tod))",
			"\\bmaos (?:bem )?lavadas\\b",
			"\\blava(?:-lou|-loi|torio)\\w*",
		],
	},
};

const GAP = "[ '’]+";

/** A washing word and what is washed, where that is no piece; soap that is rinsed off, or soapy water that is made. */
function patternsOf({ washes, between, others, toSoap, soap, also }: WashingWords): string[] {
	return [
		`\\b(?:${washes})\\w*(?:${GAP}(?:${between}))*${GAP}(?:${others})\\w*`,
		`\\b(?:${toSoap})\\w*(?:${GAP}(?!${washes})\\w+)*${GAP}(?:${soap})\\w*`,
		...also,
	];
}

const ASIDES = new RegExp(Object.values(washingAsides).flatMap(patternsOf).join("|"), "gi");

/**
 * A step without what it says of washing that washes no piece.
 *
 * @param step without accents
 * @example "Pour the solution away and clean up" → "Pour the solution away and "
 */
export function withoutWashingAsides(step: string): string {
	return step.replace(ASIDES, "");
}
