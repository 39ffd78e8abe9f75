import type { Method } from "../methods/method.ts";
import { say } from "../say.ts";
import { commonPractice, type Source } from "../source.ts";
import { sources } from "../sources.ts";
import type { Step } from "./step.ts";

/** A step of a round as a unit could begin with it, and where it comes from. */
export interface ProposedStep extends Step {
	readonly source: Source;
}

/** Minutes that a unit accepts as the shortest, of each method. */
export interface ShortestMinutes {
	readonly soak: number;
	readonly boil: number;
	readonly steam: number;
}

interface Given {
	readonly method?: Step["method"];
	readonly source?: Source;
}

const step = (
	basis: Step["basis"],
	minutes: number,
	hands_on: Step["hands_on"],
	words: string,
	{ method = null, source = commonPractice }: Given = {},
): ProposedStep => ({ step: words, basis, minutes, hands_on, method, source });

const wipe = step("kit", 3, "yes", say`Wipe off with gauze right after use, before anything dries`);
const wash = [
	step("kit", 5, "yes", say`Take apart and count the pieces`),
	step("kit", 15, "yes", say`Wash and brush every piece in soapy water, narrow tips with a pick`),
	step("kit", 10, "yes", say`Rinse off the soap, look for scale, drain and dry`),
];
const test = step("kit", 10, "yes", say`Look for damage, count, put together and test`);
const store = step("kit", 5, "yes", say`Pack, label with the date and store, covered and dry`);
const finish = [
	step(
		"round",
		5,
		"yes",
		say`Gloves off, hands washed, sterile gloves on: from here on everything is clean`,
	),
	step("kit", 10, "yes", say`Dry inside and out with sterile gauze (in the air alone: hours)`, {
		source: sources.drying,
	}),
	step("round", 20, "no", say`Let the rest dry in the air, under sterile linen`, {
		source: sources.drying,
	}),
	test,
	store,
];
const gloves = step(
	"round",
	5,
	"yes",
	say`Gloves, apron, mask and eye protection on, window open, containers set out`,
);
const tidy = step("round", 10, "yes", say`Clean up the dirty side`);
const takeOut = say`Let cool, take out with disinfected forceps, drain well`;

/**
 * Steps of a round by one method to begin with, for a person to check against the unit's own
 * protocol and the maker's instructions.
 *
 * Cleaning comes before disinfection, as in newer handbooks; older ones soak first. What is
 * done for one method alone says so: the mixing then waits for vinegar to be gone.
 * Minutes are estimates, the longer end of what is usual, so that a round is rather
 * planned too long than too short; only the soak, the boil and the steam have a source.
 */
export function proposedSteps(method: Method, shortest: ShortestMinutes): readonly ProposedStep[] {
	return proposals[method](shortest);
}

const proposals: Readonly<Record<Method, (shortest: ShortestMinutes) => readonly ProposedStep[]>> =
	{
		chlorine: ({ soak }) => {
			const method = "chlorine";
			return [
				wipe,
				gloves,
				step("round", 10, "yes", say`Mix and label the chlorine solution`, { method }),
				...wash,
				step("load", soak, "no", say`Soak fully under the solution, no air trapped`, {
					method,
					source: sources.soakMinutes,
				}),
				step(
					"load",
					10,
					"yes",
					say`Take out with disinfected forceps, rinse in order through the buckets of boiled, cooled water`,
					{ method, source: sources.threeRinses },
				),
				step("round", 10, "yes", say`Pour the solution away and clean up the dirty side`, {
					method,
				}),
				...finish,
			];
		},
		boiling: ({ boil }) => {
			const method = "boiling";
			return [
				wipe,
				gloves,
				...wash,
				step(
					"load",
					30,
					"no",
					say`Every piece under water in the pot, no air in it, lid on: bring to a rolling boil`,
					{ method },
				),
				step("load", boil, "no", say`Keep at a rolling boil, lid on, add nothing`, {
					method,
					source: sources.boilPieces,
				}),
				step("load", 10, "yes", takeOut, { method }),
				tidy,
				...finish,
			];
		},
		steam: ({ steam }) => {
			const method = "steam";
			return [
				wipe,
				gloves,
				...wash,
				step(
					"load",
					15,
					"no",
					say`Pieces on the rack, none covering another, lid on: heat until steam comes`,
					{ method },
				),
				step("load", steam, "no", say`Keep in steam, lid on`, {
					method,
					source: sources.steamPieces,
				}),
				step("load", 10, "yes", takeOut, { method }),
				tidy,
				...finish,
			];
		},
		autoclave: () => {
			const method = "autoclave";
			return [
				wipe,
				gloves,
				...wash,
				test,
				step("kit", 5, "yes", say`Wrap with indicator tape and the date`, { method }),
				step("round", 5, "yes", say`Send to the autoclave`, { method }),
				tidy,
				step("round", 10, "yes", say`What came back: tape changed, wrap whole and dry; put away`, {
					method,
				}),
			];
		},
		single_use: () => [
			gloves,
			step("kit", 5, "yes", say`Throw away what was used; wipe the box`, { method: "single_use" }),
			test,
			store,
			tidy,
		],
	};
