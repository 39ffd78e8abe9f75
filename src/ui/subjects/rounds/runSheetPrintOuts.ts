import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { type Child, el } from "../../dom/el.ts";
import { sentences } from "../../dom/sentences.ts";
import { withinSentence } from "../../dom/withinSentence.ts";
import { counted } from "../../format/counted.ts";
import { levelWords } from "../../format/levelWords.ts";
import { problemWords } from "../../format/problemWords.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { TO_WRITE } from "../../format/toWrite.ts";
import type { PrintOut } from "../../page.ts";
import { type EveryPage, paperForm } from "../../print/paperForm.ts";
import { printedFoot } from "../../print/printedHead.ts";
import { truthsOnPaper } from "../../sheet/truthsPart.ts";
import { reprocessesAfterEachUse } from "../../state/reprocessesAfterEachUse.ts";
import type { State } from "../../state/store.ts";
import { printedSetting } from "../../state/unitSetting.ts";
import { waysOf } from "../../state/waysOf.ts";
import { pourAwayWords } from "../mixing/mixSteps.ts";
import { dayCautions } from "../week/dayCautions.ts";
import { chosenDay } from "./chosenDay.ts";
import { dayRounds, runDays, type ShownRound, type ShownStep } from "./dayRounds.ts";
import { needsOfDay } from "./needsOfDay.ts";
import { oneKitSteps } from "./oneKitSteps.ts";
import { roundClock, roundSpan } from "./roundClock.ts";

/** More rows than these stand closer, so that a day still fits its page … */
const ROOMY_ROWS = 30;
/** … and beyond these there would be no room to write: two pages then, each round whole. */
const ONE_PAGE_ROWS = 44;
/** What is to be known first takes the room of so many roomy rows at most. */
const ROWS_OF_TRUTHS = 6;

const VINEGAR = say.safety`STOP. Any smell of vinegar left? Rinse again. Vinegar and chlorine together make poisonous gas: other vessel, other basin, other cloth, poured away apart.`;

/** Run sheets for paper: the day looked at, or every day; for one kit where kits are reprocessed as they come. */
export const runSheetPrintOuts: readonly PrintOut[] = [
	{
		name: say`Print this day’s work sheet`,
		pages: (state) =>
			reprocessesAfterEachUse(state) ? [oneKitPage(state)] : dayPages(state, today(runDays(state))),
	},
	{
		name: say`Print every day`,
		pages: (state) =>
			reprocessesAfterEachUse(state) ? [oneKitPage(state)] : dayPages(state, runDays(state)),
	},
];

function today(days: readonly IsoDate[]): IsoDate[] {
	const day = chosenDay(days);
	return day === undefined ? [] : [day];
}

function dayPages(state: State, days: readonly IsoDate[]): HTMLElement[] {
	if (days.length === 0) {
		const [first] = state.plan.problems;
		const waits = first ? problemWords(first) : say`the rounds of the day`;
		return [page(state, { title: say`No rounds yet. They need: ${waits}` }, [], [])];
	}
	return days.map((day) => {
		const rounds = dayRounds(state, day);
		const needs = needsOfDay(state, day, rounds).map((words) =>
			el("p", { class: "run-needs" }, ...sentences(words)),
		);
		return page(
			state,
			{ title: say`Work sheet`, when: shownDayAndYear(day) },
			needs,
			rounds.map((round) => roundRows(state, round, day)),
		);
	});
}

function oneKitPage(state: State): HTMLElement {
	const words = {
		title: say`Work sheet for one kit, as it comes`,
		when: say`Date: ______________`,
	};
	return page(state, words, [], [roundRows(state, oneKitSteps(state), undefined)]);
}

function page(
	state: State,
	words: Pick<EveryPage, "title" | "when">,
	needs: readonly Child[],
	rounds: readonly HTMLElement[],
): HTMLElement {
	const truths = truthsOnPaper(state);
	const rows = rounds.reduce((sum, round) => sum + round.childElementCount, 0);
	const roomy = ROOMY_ROWS - (truths ? ROWS_OF_TRUTHS : 0);
	const room = rows > ONE_PAGE_ROWS ? " long" : rows > roomy ? " dense" : "";
	return paperForm(
		state,
		`run-paper${room}`,
		{
			...words,
			cautions: [...dayCautions, pourAwayWords(printedSetting(state, "pour_away"))],
			end: printedFoot(),
		},
		...needs,
		truths,
		el(
			"table",
			{ class: "run-table" },
			el(
				"thead",
				{},
				el(
					"tr",
					{},
					...[say`Plan`, say`Step`, say`Done`, say`Actual`, say`Initials`].map((name) =>
						el("th", { scope: "col" }, name),
					),
				),
			),
			...rounds,
		),
		el("p", { class: "hint" }, levelWords(waysOf(state).treated)),
	);
}

function roundRows(state: State, round: ShownRound, day: IsoDate | undefined): HTMLElement {
	const { name, kits, steps, waitsFor } = round;
	const ways = new Set(steps.map(({ method }) => method).filter(Boolean));
	const start = steps[0]?.startsAt ?? 0;
	const end = steps.at(-1)?.endsAt ?? 0;
	const span = day === undefined ? say`${plain(end)} minutes` : roundSpan(start, end, day);
	// For one kit: before chlorine is opened; where no step says so, before the soak.
	const afterVinegar = steps.find(({ opensChlorine }) => opensChlorine) ?? firstSoak(steps);
	const rows = steps.flatMap((step, at) => [
		steps[at - 1]?.sort === "rinse" && cautionRow(VINEGAR),
		day === undefined && step === afterVinegar && whereDescaled(state),
		stepRow(state, step, day, ways.size > 1),
	]);
	return el(
		"tbody",
		{},
		el(
			"tr",
			{ class: "run-round" },
			el(
				"th",
				{ scope: "rowgroup", colspan: 5 },
				...(steps.length === 0
					? withinSentence(
							(round) => say`${round} has no times yet. ${waitsFor}`,
							el("strong", {}, name),
						)
					: withinSentence(
							(round) => say`${round}, prepared for ${counted(kits, "kit")}. Kits in this round:`,
							el("strong", {}, `${name} ${span}`),
						)),
				" ",
				el("span", { class: "line-to-write" }),
			),
		),
		...rows,
	);
}

function firstSoak(steps: readonly ShownStep[]): ShownStep | undefined {
	return steps.find(({ sort }) => sort === "soak");
}

function cautionRow(words: string): HTMLElement {
	return el("tr", { class: "run-caution" }, el("td", { colspan: 5 }, el("strong", {}, words)));
}

/** Where no round has a place of its own for it, descaling stands as a condition before the soak. */
function whereDescaled(state: State): HTMLElement | false {
	const { value: every, why } = printedSetting(state, "descale_every_rounds");
	if (every === 0) return false;
	return cautionRow(
		`${say.safety`White crust, or every ${every ?? TO_WRITE} kits: first descale in diluted vinegar, in a vessel of its own; then rinse and drain.`} ${why} ${VINEGAR}`,
	);
}

/** @param sayMethod where the round has several */
function stepRow(
	state: State,
	step: ShownStep,
	day: IsoDate | undefined,
	sayMethod: boolean,
): HTMLElement {
	const { startsAt, endsAt, sort } = step;
	const span =
		day === undefined
			? `${plain(startsAt)}–${plain(endsAt)} min`
			: `${roundClock(startsAt, day)}–${roundClock(endsAt, day)}`;
	const soak = sort === "soak";
	const held = sort === "hold";
	const shortest = printedSetting(state, "soak_minutes");
	const least = shortest.value === undefined ? TO_WRITE : plain(shortest.value);
	return el(
		"tr",
		{ class: `run-step ${sort}` },
		el("td", { class: "run-plan" }, span),
		el(
			"td",
			{},
			soak || held ? el("strong", {}, step.step) : step.step,
			sayMethod && step.method !== "" && el("span", { class: "unit" }, ` (${step.method})`),
			soak && shortest.why !== "" && el("span", { class: "unit" }, " ", shortest.why),
			sort === "wait" && el("span", { class: "unit" }, " ", say`(waiting)`),
		),
		el("td", { class: "run-box" }, el("span", { class: "box-to-tick" })),
		el(
			"td",
			{ class: "run-really" },
			soak
				? say`in ___:___ out ___:___ (≥ ${least} min)`
				: held
					? say`from ___:___ to ___:___ (≥ ${plain(endsAt - startsAt)} min)`
					: "",
		),
		el("td", {}),
	);
}

function plain(minutes: number): string {
	return shownPlain(Math.round(minutes));
}
