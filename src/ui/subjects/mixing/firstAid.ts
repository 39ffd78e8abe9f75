import { say } from "../../../core/say.ts";
import { commonPractice, type Source } from "../../../core/source.ts";
import { sources } from "../../../core/sources.ts";

/** Something that can happen where chlorine is worked with, and what is done then, in order. */
export interface Mishap {
	readonly what: string;
	readonly todo: readonly string[];
	/** Where this is said; where several say it, the first. */
	readonly sources: readonly Source[];
}

/** From the most urgent to what keeps it from happening. */
export const firstAid: readonly Mishap[] = [
	{
		what: say.safety`Chlorine or vinegar in the eye`,
		todo: [
			say.safety`Rinse at once with clean running water for 15 minutes by the clock, the lids held open, away from the other eye. Contact lenses out.`,
			say.safety`Then to a doctor at once, and go on rinsing on the way if it hurts.`,
		],
		sources: [sources.eyeRinse],
	},
	{
		what: say.safety`On the skin`,
		todo: [
			say.safety`Wet clothes and gloves off; rinse with plenty of water, 15 minutes where it burns.`,
			say.safety`Pain, blisters or white skin afterwards: to a doctor.`,
		],
		sources: [commonPractice],
	},
	{
		what: say.safety`Swallowed`,
		todo: [
			say.safety`Rinse the mouth, then a few sips of water. Do not make the person vomit; give nothing to somebody drowsy.`,
			say.safety`To a doctor at once, with the bottle or its label.`,
		],
		sources: [sources.chlorineCare, commonPractice],
	},
	{
		what: say.safety`A smell of gas, stinging eyes, cough`,
		todo: [
			say.safety`Everybody out into fresh air at once, newborns first. Windows and doors open if that needs no going back in.`,
			say.safety`Sitting upright, tight clothes loose. Hard breathing, wheezing or a cough that stays: to a doctor at once; it can get worse for hours.`,
			say.safety`Nobody goes in again before the smell is gone.`,
		],
		sources: [sources.chlorineGas, sources.chlorineCare, commonPractice],
	},
	{
		what: say.safety`A spill`,
		todo: [
			say.safety`People away, windows open; gloves, eye protection, apron, closed shoes on.`,
			say.safety`A liquid: flood it with plenty of water, mop it up, rinse the mop and the floor. No other cleaner on it.`,
			say.safety`A powder: keep it dry. Sweep it up with a clean dry broom into a dry plastic vessel; no sawdust, paper or rags, and never back into its tin.`,
		],
		sources: [sources.powderFire, commonPractice],
	},
	{
		what: say.safety`Never together`,
		todo: [
			say.safety`Never chlorine with vinegar, another acid or a toilet cleaner; never with ammonia or urine: poisonous gas.`,
			say.safety`Never chlorine with soap or any other cleaner; never two chlorine products in one vessel or by one scoop.`,
			say.safety`Never chlorine powder near oil, fuel, sawdust or a flame: fire.`,
		],
		sources: [sources.chlorineCare, sources.powderFire],
	},
	{
		what: say.safety`Not without advice`,
		todo: [
			say.safety`Who is pregnant, has asthma or another disease of the lungs, a disease or cuts of the skin of the hands, or an allergy to latex asks for advice or another duty first.`,
		],
		sources: [{ ...commonPractice, mark: "from memory" }],
	},
];
