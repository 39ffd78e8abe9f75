import { say } from "../../core/say.ts";
import { ask } from "../shell/ask.ts";
import type { Hindrance, WrittenFile } from "./writeFile.ts";

/** Says why nothing was saved and asks how to go on. */
export function askAfterHindrance({ file, hindrance = "failed", reason }: WrittenFile) {
	const { name } = file.handle;
	const what: Readonly<Record<Hindrance, string>> = {
		changed: say`${name} was changed by another window or another program since it was opened or last saved here. If you replace it, what was put there is lost.`,
		"other-plan": say`The plan in ${name} begins on another day than this one. If you replace it, that plan is lost.`,
		refused: say`The browser was not allowed to write to ${name}.`,
		gone: say`${name} is not there any more: it was moved, renamed or deleted, or its stick was taken out.`,
		failed: reason
			? say`${name} could not be written. The browser says: ${reason}`
			: say`${name} could not be written.`,
	};
	const isThere = hindrance === "changed" || hindrance === "other-plan";
	const together = [["together", say`Bring both together`]] as const;
	return ask({
		title: say`The workbook is not saved`,
		text: [what[hindrance]],
		answers: [
			...(hindrance === "changed" ? together : []),
			["elsewhere", say`Save as another file`],
			["again", isThere ? say`Replace it` : say`Try again`],
			["leave", say`Do not save now`],
		],
	});
}
