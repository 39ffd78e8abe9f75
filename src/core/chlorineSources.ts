import { say } from "./say.ts";
import type { Source } from "./source.ts";

/** What is published of chlorine: strength, fading, dilution, cautions. */
export const chlorineSources = {
	solutionLife: {
		title: say`CDC, how to make 0.1 % chlorine solution; CDC poster CS316270A`,
		place: say`9 February 2021; 15 May 2020: made new every day, good for up to 24 hours`,
		url: "https://www.cdc.gov/coronavirus/2019-ncov/global-covid-19/make-chlorine-solution-non-healthcare-settings.html",
		mark: "seen",
		disagreement: say`Cox's Bazar water sector 2020: 3 to 4 days for solution from calcium hypochlorite.`,
	},
	dilution: {
		title: say`CDC and ICAN, Best Practices for Environmental Cleaning, Appendix E`,
		place: say`chlorine formulas and examples`,
		url: "https://www.cdc.gov/healthcare-associated-infections/hcp/cleaning-global/appendix-e.html",
		mark: "seen",
	},
	madeUpTo: {
		title: say`IFRC, Epidemic control for volunteers, action tool 39`,
		place: say`2022: 100 mL of 5 % and 900 mL of water`,
		url: "https://epidemics.ifrc.org/volunteer/action/39-preparing-and-using-disinfectants",
		mark: "seen",
		disagreement: say`Some tables say 100 mL per litre, which added to a litre makes 0.455 %, not 0.5 %.`,
	},
	onePercent: {
		title: say`Cholera outbreak field manual, Appendix 14; MSF Essential drugs`,
		place: say`1 % is 10 g/L is 10\u202f000 mg/L`,
		url: "https://choleraoutbreak.org/book-page/appendix-14-preparation-and-use-1-chlorine-solution-disinfect-water",
		mark: "seen",
	},
	chlorometric: {
		title: say`Union des professeurs de physique et de chimie, Degré chlorométrique`,
		place: say`one degree: 3.17 g of available chlorine per litre`,
		url: "https://www.udppc.asso.fr/chimie-au-laboratoire/le-degre-chlorometrique",
		mark: "seen",
		disagreement: say`Handbooks use 0.3 % a degree, which reads 5 % low by volume. Printed beside degrees: 9.6 % for 36° (114 g/L), 12.5 % for 48° (152 g/L): per cent by weight, rounded.`,
	},
	atomicWeights: {
		title: say`IUPAC standard atomic weights`,
		place: say`1995, Table 2: Cl2 70.906, NaOCl 74.442 g/mol, ratio 0.9525`,
		url: "http://old.iupac.org/reports/1996/6812coplen/atwt1995_t2.html",
		mark: "derived",
	},
	tabletLabel: {
		title: say`MSF Essential drugs; Red Cross items catalogue: tablets of 1.67 g hold 1 g`,
		place: say`a tablet's weight is not its chlorine`,
		url: "https://medicalguidelines.msf.org/en/viewport/EssDr/english/chlorine-releasing-compounds-nadcc-hth-bleach-chlorinated-lime-16687067.html",
		mark: "seen",
	},
	eyeRinse: {
		title: say`Supplier's sheet, sodium hypochlorite 5 to 6 %`,
		place: say`no date; eyes: 15 minutes of water`,
		url: "http://jentex.in/SodiumHypochlorite.html",
		mark: "seen",
	},
	chlorineCare: {
		title: say`CDC, how to make 0.1 % chlorine solution`,
		place: say`9 February 2021: with no other cleaner; care where swallowed or breathing is hard`,
		url: "https://www.cdc.gov/coronavirus/2019-ncov/global-covid-19/make-chlorine-solution-non-healthcare-settings.html",
		mark: "seen",
	},
	chlorineGas: {
		title: say`NIOSH, chlorine: immediately dangerous to life or health`,
		place: say`May 1994: 10 ppm; 30 ppm brings intense coughing`,
		url: "https://cdc.gov/niosh/idlh/7782505.HTML",
		mark: "seen",
	},
	powderFire: {
		title: say`Fire Engineering, Swimming pool disinfectants`,
		place: say`no organic absorbents or sweeping compound on the powder; acetic acid not beside it`,
		url: "https://www.fireengineering.com/leadership/swimming-pool-disinfectants/",
		mark: "seen",
	},
	pourAway: {
		title: say`CDC, how to make 0.1 % chlorine solution; MSF, cholera guideline, Appendix 15`,
		place: say`9 February 2021: leftovers to a drain or latrine; residue of calcium hypochlorite to a waste pit`,
		url: "https://medicalguidelines.msf.org/en/viewport/CHOL/english/appendix-15-preparation-and-use-of-chlorine-solutions-32409866.html",
		mark: "seen",
	},
	powderLoss: {
		title: say`Cholera outbreak field manual, Appendix 14: about 2 % of active chlorine a year`,
		place: say`read here as points of the percentage`,
		url: "https://choleraoutbreak.org/book-page/appendix-14-preparation-and-use-1-chlorine-solution-disinfect-water",
		mark: "seen",
		disagreement: say`Other handbooks: 3 to 5 % a year, to be used within 2 years (from memory).`,
	},
	settling: {
		title: say`Ministry of Health, slides on preparing chlorine`,
		place: say`October 2018: let it stand for 30 minutes`,
		url: "https://www.scribd.com/presentation/624008680",
		mark: "seen",
		disagreement: say`MSF, cholera guideline, Appendix 15: a few minutes, then only the clear liquid (seen).`,
	},
	fading: {
		title: say`Adam and Gordon, Inorganic Chemistry 38:1299-1304`,
		place: say`1999, abstract: second order, fitted for 15 to 55 °C and 0.7 to 3 mol/L; the factor 1 in the rate is from memory`,
		url: "https://suppr.wilddata.cn/browses/detail/pubmed/11670917",
		mark: "seen",
		disagreement: say`A maker of bleach plants gives 3.5 times faster for each 10 °C, the laboratory formula 3.9; a supplier reports far faster loss of 12.5 % bleach. To be used within (all seen): 3 months of making (Ministry of Health slides); 6 months to a year for household bleach (a laboratory guide); 6 months at 2.6 % and 1 to 2 at 9.6 % (INRS), or 2.5 to 3 at 9.6 % (a thesis on cholera).`,
	},
	readingErrors: {
		title: say`Wells et al., PLoS ONE 11(5):e0152442`,
		place: say`2016, abstract: strips 5.2 to 48 %, dilution and colour 2.4 to 19 %, titration up to 12.4 % off`,
		url: "https://pmc.ncbi.nlm.nih.gov/articles/PMC4887006",
		mark: "seen",
	},
	carryIn: {
		title: say`Dilution by the water wet parts carry in`,
		place: say`arithmetic; the rule to dry first is from memory`,
		mark: "derived",
	},
} as const satisfies Record<string, Source>;
