import { say } from "../../../core/say.ts";
import { shownWord } from "../../format/choiceWords.ts";

/** The state of a kit or the result of a check in words; of a kit of which a line cannot be read nobody knows it. */
export function stateWord(state: string): string {
	return state === "" ? say`not known` : shownWord(state);
}
