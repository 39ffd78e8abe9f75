import { el } from "../dom/el.ts";

interface Question<Answer extends string> {
	readonly title: string;
	readonly text: readonly string[];
	/** What can be answered, the safest first; it is the one that Enter takes. */
	readonly answers: readonly (readonly [Answer, string])[];
	/** Set where none is safer than another: then Enter takes none. */
	readonly even?: true;
}

/** Asks in a dialog over the page. @returns undefined where it is closed with Escape */
export function ask<Answer extends string>({
	title,
	text,
	answers,
	even,
}: Question<Answer>): Promise<Answer | undefined> {
	return new Promise((answered) => {
		let answer: Answer | undefined;
		const button = ([key, words]: readonly [Answer, string], at: number) =>
			el(
				"button",
				{
					type: "button",
					class: at === 0 && !even ? "main" : undefined,
					onclick: () => {
						answer = key;
						dialog.close();
					},
				},
				words,
			);
		const dialog = el(
			"dialog",
			{ "aria-label": title, autofocus: even },
			el("h2", {}, title),
			...text.map((words) => el("p", {}, words)),
			el("div", { class: "choices-row" }, ...answers.map(button)),
		);
		dialog.addEventListener("close", () => {
			dialog.remove();
			answered(answer);
		});
		document.body.append(dialog);
		dialog.showModal();
	});
}
