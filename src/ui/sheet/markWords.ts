import { say } from "../../core/say.ts";
import type { Mark } from "../../core/source.ts";

const words: Readonly<Record<Mark, string>> = {
	seen: say`seen`,
	"from memory": say`from memory`,
	derived: say`derived`,
	estimate: say`estimate`,
	definition: say`definition`,
	"common practice, no source": say`common practice, no source`,
};

/** How sure a source is, for reading. */
export function markWords(mark: Mark): string {
	return words[mark];
}
