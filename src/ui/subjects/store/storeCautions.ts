import { say } from "../../../core/say.ts";

/** What can hurt someone where supplies are kept, received or counted. */
export const storeCautions: readonly string[] = [
	say.safety`Keep chlorine apart from vinegar and other acids, ammonia and fuel: together they give off poisonous gas or burn.`,
	say.safety`Keep chlorine closed, cool, dark, dry and low, locked away from children, and never in a bottle that once held a drink.`,
	say.safety`Count and move bottles with gloves and eye protection; open a window where one has leaked.`,
];
