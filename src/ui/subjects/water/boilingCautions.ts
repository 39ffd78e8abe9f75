import { say } from "../../../core/say.ts";

/** What can hurt someone where water is boiled. */
export const boilingCautions: readonly string[] = [
	say.safety`Boiling water scalds: carry it covered, keep children away, let it cool before hands go in.`,
	say.safety`Fuel indoors needs an open window or a chimney.`,
];
