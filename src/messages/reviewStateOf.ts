import { languages } from "./languages.ts";
import reviews from "./reviews.json" with { type: "json" };

/** How far a translation has been read by a person who speaks the language and knows the trade. */
export type ReviewState = "reviewed" | "awaiting review" | "not reviewed";

const states: readonly string[] = [
	"reviewed",
	"awaiting review",
	"not reviewed",
] satisfies ReviewState[];

/**
 * How far a language has been reviewed, from reviews.json. The language that messages
 * are written in needs no review; what stands nowhere nobody has reviewed.
 */
export function reviewStateOf(language: string): ReviewState {
	if (language === languages[0].code) return "reviewed";
	const known: Readonly<Record<string, { readonly state: string }>> = reviews;
	const state = known[language]?.state ?? "not reviewed";
	if (!states.includes(state))
		throw new Error(`reviews.json: "${state}" of ${language} is none of ${states.join(", ")}.`);
	return state as ReviewState;
}
