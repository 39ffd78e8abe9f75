import { say } from "../core/say.ts";
import type { Sheet } from "../core/sheet.ts";
import { birthsSheet } from "../core/sheets/births.ts";
import { boilingSheet } from "../core/sheets/boiling.ts";
import { checksSheet } from "../core/sheets/checks.ts";
import { chlorineSheet } from "../core/sheets/chlorine.ts";
import { costsSheet } from "../core/sheets/costs.ts";
import { dayCoverSheet } from "../core/sheets/dayCover.ts";
import { dayPlanSheet } from "../core/sheets/dayPlan.ts";
import { forecastSheet } from "../core/sheets/forecast.ts";
import { hoursSheet } from "../core/sheets/hours.ts";
import { howSafeSheet } from "../core/sheets/howSafe.ts";
import { itemsSheet } from "../core/sheets/items.ts";
import { journalSheet } from "../core/sheets/journal.ts";
import { keptSettingsSheet } from "../core/sheets/keptSettings.ts";
import { kindsSheet } from "../core/sheets/kinds.ts";
import { kindUseSheet } from "../core/sheets/kindUse.ts";
import { kitCoverSheet } from "../core/sheets/kitCover.ts";
import { kitRegisterSheet } from "../core/sheets/kitRegister.ts";
import { kitsSheet } from "../core/sheets/kits.ts";
import { leversSheet } from "../core/sheets/levers.ts";
import { lotsSheet } from "../core/sheets/lots.ts";
import { mixingSheet } from "../core/sheets/mixing.ts";
import { mixingDaysSheet } from "../core/sheets/mixingDays.ts";
import { orderSheet } from "../core/sheets/order.ts";
import { pastPlansSheet } from "../core/sheets/pastPlans.ts";
import { placedSheet } from "../core/sheets/placed.ts";
import { productCompareSheet } from "../core/sheets/productCompare.ts";
import { recordsSheet } from "../core/sheets/records.ts";
import { roundsSheet } from "../core/sheets/rounds.ts";
import { roundsDoneSheet } from "../core/sheets/roundsDone.ts";
import { runSheetSheet } from "../core/sheets/runSheet.ts";
import { scorecardSheet } from "../core/sheets/scorecard.ts";
import { stepsSheet } from "../core/sheets/steps.ts";
import { stockSheet } from "../core/sheets/stock.ts";
import { stockAheadSheet } from "../core/sheets/stockAhead.ts";
import { strengthSheet } from "../core/sheets/strength.ts";
import { strengthReadingsSheet } from "../core/sheets/strengthReadings.ts";
import { supplyUseSheet } from "../core/sheets/supplyUse.ts";
import { takeFirstSheet } from "../core/sheets/takeFirst.ts";
import { tonightSheet } from "../core/sheets/tonight.ts";
import { treatmentsSheet } from "../core/sheets/treatments.ts";
import { unitSheet } from "../core/sheets/unit.ts";
import { usageSheet } from "../core/sheets/usage.ts";
import { usesSheet } from "../core/sheets/uses.ts";
import { wallTableSheet } from "../core/sheets/wallTable.ts";
import { wardSolutionSheet } from "../core/sheets/wardSolution.ts";
import { wardUseSheet } from "../core/sheets/wardUse.ts";
import { waterSheet } from "../core/sheets/water.ts";
import { waterSourcesSheet } from "../core/sheets/waterSources.ts";
import { weekPlanSheet } from "../core/sheets/weekPlan.ts";
import { weekTotalSheet } from "../core/sheets/weekTotal.ts";
import { later } from "./dom/later.ts";
import { readers } from "./files/bringReaders.ts";
import type * as OnPages from "./onPages.ts";
import type { GridPage, OwnPage, Page, PageTitle, SheetPage } from "./page.ts";
import type { QuestionName } from "./shell/questionOrder.ts";
import { beginTitle } from "./subjects/begin/beginTitle.ts";
import { whatIfTitle } from "./subjects/compare/whatIfTitle.ts";
import { twoCopiesTitle } from "./subjects/copies/twoCopiesTitle.ts";
import { kitHistoryTitle } from "./subjects/kits/kitHistoryTitle.ts";
import { labelsTitle } from "./subjects/labels/labelsTitle.ts";
import { disagreementsTitle } from "./subjects/mixing/disagreementsTitle.ts";
import { firstAidTitle } from "./subjects/mixing/firstAidTitle.ts";
import { mondayTitle } from "./subjects/monday/mondayTitle.ts";
import { monthTitle } from "./subjects/month/monthTitle.ts";
import { storekeeperTitle } from "./subjects/store/storekeeperTitle.ts";
import { todayPage } from "./subjects/today/todayPage.ts";
import { todayTitle } from "./subjects/today/todayTitle.ts";
import { severalUnitsTitle } from "./subjects/units/severalUnitsTitle.ts";
import { planTitle } from "./subjects/week/planTitle.ts";
import { weekMeasures } from "./subjects/week/weekMeasures.ts";
import { weekPage } from "./subjects/week/weekPage.ts";
import { wordsTitle } from "./subjects/words/wordsTitle.ts";

export interface PageQuestion {
	/** By which an order of questions names it. */
	readonly name: QuestionName;
	readonly question: string;
	readonly pages: readonly Page[];
	/** What is rarely needed: folded away under the others. */
	readonly more: readonly Page[];
}

/** The plan itself, which the first screen needs; a wrong address leads here too. */
export const planPage: Page = {
	...planTitle,
	rowNames: weekMeasures.map(({ label }) => label),
	load: async () => weekPage,
};

/** The first page of a workbook that has been begun. */
export const firstPage: Page = { ...todayTitle, load: async () => todayPage };

const onPages = later(() => import("./onPages.ts"));
/** Answered once, by a unit that begins. */
const onBegin = later(() => import("./subjects/begin/beginPage.ts"));
/** For whoever orders for many units, out of the files that they send. */
const onUnits = later(async () => {
	await readers.bring();
	return import("./subjects/units/severalUnitsPage.ts");
});
/** Looked up now and then. */
const onWords = later(() => import("./subjects/words/wordsPage.ts"));
/** Looks at the whole record and is opened once a month: a script of its own. */
const onMonth = later(() => import("./subjects/month/monthPage.ts"));

/** Seldom wanted, and reckons with two workbooks. */
const onCopies = later(() => import("./subjects/copies/twoCopiesPage.ts"));

/** The workbook in its order: the questions people ask, and the pages that answer them. */
export const questions: readonly PageQuestion[] = [
	{
		name: "week",
		question: say`This week`,
		pages: [
			firstPage,
			page(mondayTitle, (its) => its.mondayPage),
			planPage,
			plainPage(dayPlanSheet),
			page(weekPlanSheet, (its) => its.weekPlanPage),
			plainPage(weekTotalSheet),
			page(tonightSheet, (its) => its.tonightPage),
			{ ...monthTitle, load: async () => (await onMonth.bring()).monthPage },
			{ ...beginTitle, load: async () => (await onBegin.bring()).beginPage },
		],
		more: [plainPage(howSafeSheet)],
	},
	{
		name: "coming",
		question: say`What is coming?`,
		pages: [
			page(forecastSheet, (its) => its.forecastPage),
			page(birthsSheet, (its) => its.birthsPage),
			page(recordsSheet, (its) => its.recordsPage),
		],
		more: [
			plainPage(pastPlansSheet),
			page(scorecardSheet, (its) => its.scorecardPage),
			plainPage(hoursSheet),
		],
	},
	{
		name: "ready",
		question: say`What must be ready?`,
		pages: [
			page(kitCoverSheet, (its) => its.kitCoverPage),
			page(leversSheet, (its) => its.leversPage),
			page(dayCoverSheet, (its) => its.dayCoverPage),
			page(runSheetSheet, (its) => its.runSheetPage),
			plainPage(stepsSheet),
			page(kitRegisterSheet, (its) => its.kitRegisterPage),
			plainPage(kitsSheet),
			page(labelsTitle, (its) => its.labelsPage),
			plainPage(usesSheet),
			plainPage(roundsDoneSheet),
			page(checksSheet, (its) => its.checksPage),
		],
		more: [
			page(kitHistoryTitle, (its) => its.kitHistoryPage),
			plainPage(kindsSheet),
			plainPage(treatmentsSheet),
			plainPage(roundsSheet),
			plainPage(kindUseSheet),
		],
	},
	{
		name: "mix",
		question: say`What do we mix and boil?`,
		pages: [
			page(mixingSheet, (its) => its.mixingPage),
			page(firstAidTitle, (its) => its.firstAidPage),
			page(mixingDaysSheet, (its) => its.mixingDaysPage),
			page(wallTableSheet, (its) => its.wallTablePage),
			page(strengthSheet, (its) => its.strengthPage),
			page(boilingSheet, (its) => its.boilingPage),
			page(waterSheet, (its) => its.waterPage),
		],
		more: [
			plainPage(strengthReadingsSheet),
			page(productCompareSheet, (its) => its.productComparePage),
			page(wardUseSheet, (its) => its.wardUsePage),
			page(wardSolutionSheet, (its) => its.wardSolutionPage),
			plainPage(chlorineSheet),
			plainPage(waterSourcesSheet),
		],
	},
	{
		name: "fetch",
		question: say`Stock and orders`,
		pages: [
			page(storekeeperTitle, (its) => its.storekeeperPage),
			page(orderSheet, (its) => its.orderPage),
			page(placedSheet, (its) => its.placedPage),
			page(stockSheet, (its) => its.stockPage),
			page(lotsSheet, (its) => its.lotsPage),
			page(stockAheadSheet, (its) => its.stockAheadPage),
			page(journalSheet, (its) => its.journalPage),
		],
		more: [
			plainPage(takeFirstSheet),
			page(supplyUseSheet, (its) => its.supplyUsePage),
			plainPage(itemsSheet),
			{ ...severalUnitsTitle, load: async () => (await onUnits.bring()).severalUnitsPage },
			page(costsSheet, (its) => its.costsPage),
		],
	},
	{
		name: "how",
		question: say`How we work here`,
		pages: [
			plainPage(unitSheet),
			page(whatIfTitle, (its) => its.whatIfPage),
			plainPage(usageSheet),
			page(disagreementsTitle, (its) => its.disagreementsPage),
			{ ...wordsTitle, load: async () => (await onWords.bring()).wordsPage },
			{ ...twoCopiesTitle, load: async () => (await onCopies.bring()).twoCopiesPage },
		],
		more: [plainPage(keptSettingsSheet)],
	},
];

/** Every page of the workbook. */
export const pages: readonly Page[] = questions.flatMap(({ pages: first, more }) => [
	...first,
	...more,
]);

const byFile = new Map(pages.map((page) => [page.file, page]));

/** The page of this name in the address; undefined where there is none. */
export function pageOf(file: string): Page | undefined {
	return byFile.get(file);
}

/** A page of which the first script has the title, and a further one what stands on it. */
function page(title: PageTitle, pick: (its: typeof OnPages) => GridPage | OwnPage): Page {
	return { ...title, load: async () => pick(await onPages.bring()) };
}

/** The page of a sheet that has nothing around its cells. */
function plainPage(sheet: Sheet): Page {
	const plain: SheetPage = { sheet };
	return { ...sheet, load: async () => plain };
}
