import type { Method } from "../../core/methods/method.ts";
import { say } from "../../core/say.ts";

/** What pieces are after their methods: disinfected to a high level or sterile, and never the one for the other. */
export function levelWords(methods: Iterable<Method>): string {
	const used = new Set(methods);
	const high = used.has("chlorine") || used.has("boiling") || used.has("steam");
	if (high)
		return used.has("autoclave")
			? say.safety`High-level disinfection, not sterilisation: only the pieces from the autoclave are sterile.`
			: say.safety`High-level disinfection, not sterilisation.`;
	return used.has("autoclave")
		? say.safety`Sterilised: as long as the wrap is whole, dry and closed.`
		: say.safety`New pieces for each use.`;
}
