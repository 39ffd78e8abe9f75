import { say } from "./say.ts";

/** A word of the program: one word for one thing, wherever it stands. */
export interface Term {
	readonly term: string;
	readonly meaning: string;
}

/**
 * The words used here, in the order of the work. src/messages/terms has for each of them
 * how it is found in texts, and the words that must not take its place.
 */
export const glossary: readonly Term[] = [
	{
		term: say`kit`,
		meaning: say`Ventilation bag, masks and suction device that belong together and go through a round together.`,
	},
	{
		term: say`in service`,
		meaning: say`Of a kit: the unit counts on it. In repair or incomplete it is out of service.`,
	},
	{
		term: say`ready`,
		meaning: say`Of a kit: disinfected, complete, dry, tested after its last round, and its last day not over.`,
	},
	{
		term: say`state of each kit`,
		meaning: say`The sheet that says which kits are ready, until when, and which one to use next.`,
	},
	{
		term: say`to reprocess`,
		meaning: say`Of a kit: used, opened or out of date; it has to go through a round before it may be used again.`,
	},
	{
		term: say`round`,
		meaning: say`Everything done with the kits that wait, from taking them apart to testing them: washing, disinfecting, rinsing, drying.`,
	},
	{
		term: say`work sheet`,
		meaning: say`The rounds of a day by the clock, step by step, to be printed and ticked.`,
	},
	{
		term: say`load`,
		meaning: say`What goes at once into the soak container, the boiling pot or the steamer.`,
	},
	{
		term: say`soak`,
		meaning: say`The time that clean pieces lie in chlorine solution to be disinfected.`,
	},
	{
		term: say`preparation`,
		meaning: say`Chlorine solution mixed once, up to its full litres.`,
	},
	{
		term: say`liquid bleach`,
		meaning: say`A chlorine product that is a liquid: sodium hypochlorite in water.`,
	},
	{
		term: say`available chlorine`,
		meaning: say`What of a chlorine product disinfects. Strengths are told in it: 0.5 % is 5 g in a litre.`,
	},
	{
		term: say`strength wanted`,
		meaning: say`How much available chlorine the mixed solution is to have.`,
	},
	{
		term: say`loses strength`,
		meaning: say`What liquids and powders do with time, faster where it is warm, and in a real bottle faster than in the laboratory.`,
	},
	{
		term: say`discard time`,
		meaning: say`When a mixed solution or boiled water is poured away at the latest; it stands on the label.`,
	},
	{
		term: say`good ventilation`,
		meaning: say`Windows and doors open, or work outside, so that chlorine gas does not gather.`,
	},
	{
		term: say`descaling`,
		meaning: say`A bath in diluted vinegar that takes off a white crust; never together with chlorine.`,
	},
	{
		term: say`boiled, cooled water`,
		meaning: say`Water kept at a rolling boil and cooled covered by itself; disinfected pieces are rinsed with it.`,
	},
	{
		term: say`rinse bucket`,
		meaning: say`A clean bucket of boiled, cooled water; each load goes through its buckets in order.`,
	},
	{
		term: say`start tonight`,
		meaning: say`The sheet that says what has to begin the evening before, so that the first round of the day can start.`,
	},
	{
		term: say`high-level disinfection`,
		meaning: say`What chlorine, boiling and steam reach: nearly all germs are killed. It is not sterilisation.`,
	},
	{
		term: say`pressure-relief valve`,
		meaning: say`The part of the bag that lets air out before the pressure can hurt the lungs of a baby; it must open.`,
	},
	{
		term: say`average`,
		meaning: say`What comes on average over many such days or weeks; many of them bring more.`,
	},
	{
		term: say`prepare for`,
		meaning: say`The number that is enough on as many of 100 such days or weeks as the unit asks for, so more than the average.`,
	},
	{
		term: say`you have`,
		meaning: say`What is there now, beside what is needed.`,
	},
	{
		term: say`times no kit is ready when needed`,
		meaning: say`Of 1\u202f000 times a kit is needed, how often none is ready. The unit says how many of them it accepts.`,
	},
	{
		term: say`weak hours of the day`,
		meaning: say`The hours at which fewest kits are ready, mostly just before a round gives its kits back.`,
	},
	{
		term: say`births and kits used, day by day`,
		meaning: say`What was counted from the register of births and written down each day. The forecast learns from it.`,
	},
	{
		term: say`delivery bed`,
		meaning: say`A place where a baby can be born at any hour; one ready kit is kept for each.`,
	},
	{
		term: say`stock and orders`,
		meaning: say`What is in the store, what runs out and when, and what to order.`,
	},
	{
		term: say`lot`,
		meaning: say`What came in one delivery with one number on its boxes or bottles; it expires and loses strength as one.`,
	},
	{
		term: say`on the way`,
		meaning: say`Of an order: placed and not received yet. Past its day it is overdue.`,
	},
	{
		term: say`reserve`,
		meaning: say`The stock kept for busy weeks and late deliveries. A new order has to come before it is touched.`,
	},
	{
		term: say`count sheet`,
		meaning: say`The list on paper with which the store is counted, lot by lot.`,
	},
	{
		term: say`needs a number`,
		meaning: say`Said where something typed is missing or cannot be right, so that the plan cannot say a number yet.`,
	},
	{
		term: say`open problem`,
		meaning: say`Something to put right or to look at, with its place and what is allowed there.`,
	},
	{
		term: say`severity`,
		meaning: say`Of a problem: whether a number cannot be given, or the numbers stand and something is worth a look.`,
	},
	{
		term: say`qualified staff's judgement`,
		meaning: say`With the national protocol and the maker's instructions, what comes before anything that this program works out.`,
	},
];
