import { say } from "../../../core/say.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { sources } from "../../../core/sources.ts";
import { type Child, el } from "../../dom/el.ts";
import { sourceWords } from "../../sheet/sourceWords.ts";
import { hashOf } from "../../shell/hashOf.ts";
import type { State } from "../../state/store.ts";
import {
	type KitShare,
	kitShareOf,
	kitShareSwitch,
	kitShareWords,
	oneDecimal,
} from "./kitShareWords.ts";
import { registerOf } from "./registerOf.ts";

/** Kits used per 100 births: the setting and what the register teaches, side by side, and how the two came about. */
export function kitShareView(state: State): HTMLElement | undefined {
	return view(state, (share) => [
		el("p", {}, kitShareWords(share)),
		el("p", {}, kitShareSwitch(share), " ", toSettings()),
		el("p", { class: "source" }, ...sourceWords(sources.kitShare)),
	]);
}

/** The same in few words, where the register is filled in. */
export function kitShareInBrief(state: State): HTMLElement | undefined {
	return view(state, (share) => [el("p", {}, kitShareSwitch(share), " ", toSettings())]);
}

function view(state: State, words: (share: KitShare) => readonly Child[]): HTMLElement | undefined {
	const register = registerOf(state);
	const share = register && kitShareOf(register);
	if (!share) return undefined;
	return el(
		"section",
		{ class: "kit-share", "aria-label": say`Kits used per 100 births` },
		el("h2", {}, say`Kits used per 100 births`),
		sideBySide(share),
		...words(share),
	);
}

function toSettings(): HTMLElement {
	return el("a", { href: hashOf(unitSheet.file) }, say`Settings of the unit`);
}

function sideBySide({ chosen, learned, births, takesLearned }: KitShare): HTMLElement {
	const figure = (value: string, words: string, taken: boolean) =>
		el(
			"div",
			{ class: taken ? "share taken" : "share" },
			el("strong", {}, value),
			el("span", {}, words),
		);
	return el(
		"div",
		{ class: "shares" },
		figure(
			oneDecimal(chosen),
			takesLearned ? say`your setting` : say`your setting: in the plan`,
			!takesLearned,
		),
		figure(
			births === 0 ? "–" : oneDecimal(learned),
			takesLearned ? say`learned: in the plan` : say`learned`,
			takesLearned,
		),
	);
}
