import { say } from "../../core/say.ts";
import { measures, planMeasures } from "../../core/sheets/planMeasures.ts";

/** What people read for the words that files keep: choices, states of a kit, measures, fuels. */
export const choiceWords: Readonly<Record<string, string>> = {
	yes: say`yes`,
	no: say`no`,
	// How this unit works.
	in_rounds: say`in rounds`,
	after_each_use: say`after each use`,
	in_time: say`in time`,
	when_expired: say`when out of date`,
	every_round: say`for every round`,
	standing: say`to stand ready`,
	after_use: say`once a kit waits`,
	each_round: say`each round`,
	each_day: say`each day`,
	tap: say`tap water`,
	boiled: say`boiled, cooled water`,
	wood_three_stone: say`wood, three stones`,
	wood_improved: say`wood, improved stove`,
	wood_forced_draft: say`wood, forced draft`,
	charcoal_traditional: say`charcoal, traditional stove`,
	charcoal_improved: say`charcoal, improved stove`,
	kerosene: say`kerosene`,
	lpg: say`gas (LPG)`,
	electric: say`electric`,
	chlorine: say`chlorine soak`,
	boiling: say`boiling`,
	steam: say`steam`,
	autoclave: say`autoclave`,
	single_use: say`single use`,
	// What is counted by what.
	day: say`day`,
	round: say`round`,
	load: say`load`,
	kit: say`kit`,
	piece: say`piece`,
	worker_round: say`person in a round`,
	descale: say`descaling`,
	setting: say`setting`,
	// Kits and their checks.
	in_service: say`in service`,
	out_of_service: say`out of service`,
	ready: say`ready`,
	passed: say`passed`,
	to_reprocess: say`to reprocess`,
	not_clean: say`not clean`,
	in_repair: say`in repair`,
	incomplete: say`incomplete`,
	after_round: say`after a round`,
	before_use: say`before use`,
	in_place_of_round: say`in place of a round`,
	used: say`used`,
	opened: say`opened`,
	none_ready: say`none ready`,
	"not finished": say`not finished`,
	"not used": say`left out`,
	"cannot be read": say`cannot be read`,
	risk: say`risk`,
	beds: say`beds`,
	kits_needed: say`kits needed`,
	boiled_for_rounds: say`water boiled for every round`,
	order: say`order`,
	// The store.
	gauze: say`gauze`,
	gloves: say`gloves`,
	other: say`other`,
	receipt: say`receipt`,
	issue: say`issue`,
	loss: say`loss`,
	journal: say`journal`,
	count: say`count`,
	pair: say`pair`,
	tablet: say`tablet`,
	liquid: say`liquid`,
	powder: say`powder`,
	pct_w_v: say`% w/v`,
	pct_w_w: say`% w/w`,
	pct_naocl_w_v: say`% NaOCl w/v`,
	pct_naocl_w_w: say`% NaOCl w/w`,
	mg_per_l: "mg/L",
	g_per_l: "g/L",
	chlorometric_degree: say`chlorometric degree`,
	g_per_tablet: say`g per tablet`,
	strip: say`strip`,
	titration: say`titration`,
	colour_comparison: say`colour comparison`,
	...measureWords(),
};

/** A word of a file for reading; any other text as it is. @example "in_service" → "in service" */
export function shownWord(text: string): string {
	return Object.hasOwn(choiceWords, text) ? (choiceWords[text] ?? text) : text;
}

function measureWords(): Record<string, string> {
	return Object.fromEntries(measures.map((measure) => [measure, planMeasures[measure].word]));
}
